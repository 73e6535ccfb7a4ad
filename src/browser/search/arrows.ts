/** Where a key leads from the place `at` of `count` results; -1 is the field. */
const steps: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowDown: (at, count) => Math.min(at + 1, count - 1),
  ArrowUp: (at) => Math.max(at - 1, -1),
};

/** The arrow keys lead from the field down through the results and back. */
export function leadsByArrows(field: HTMLInputElement, results: HTMLElement): void {
  const onKey = (event: KeyboardEvent): void => {
    const step = steps[event.key];
    if (!step || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const places = [...results.querySelectorAll<HTMLElement>('a, button')];
    const at = places.indexOf(event.target as HTMLElement);
    const next = step(at, places.length);
    if (places.length === 0 || (next === at && at === -1)) return;
    event.preventDefault();
    (places[next] ?? field).focus();
  };
  field.addEventListener('keydown', onKey);
  results.addEventListener('keydown', onKey);
}
