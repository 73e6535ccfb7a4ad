/**
 * Sets labels anew for another sheet of labels, from another place on, or nudged: the labels stay the same, only their
 * pages are made anew. Without it the page stands as it was published.
 */
export function settableLabels(document: Document): void {
  const form = document.querySelector<HTMLFormElement>('.label-controls form');
  const holder = document.querySelector<HTMLElement>('.label-pages');
  if (!form || !holder) return;
  const labels = [...holder.querySelectorAll<HTMLElement>('.label')];
  form.hidden = false;
  document.querySelector('.without-script')?.toggleAttribute('hidden', true);
  const set = (): void => setLabels(holder, labels, settingsOf(form));
  form.addEventListener('input', set);
  form.addEventListener('submit', (event) => event.preventDefault());
  set();
}

interface LabelSettings {
  readonly stock: string;
  /** Labels on one sheet. */
  readonly count: number;
  /** So many of the first sheet are gone. */
  readonly used: number;
  readonly across: number;
  readonly down: number;
  readonly outlines: boolean;
}

function settingsOf(form: HTMLFormElement): LabelSettings {
  const stock = form.querySelector<HTMLSelectElement>('[name=stock]')!;
  const count = Number(stock.selectedOptions[0]?.dataset['count'] ?? 1);
  const number = (name: string, least: number, most: number): number => {
    const written = Number(form.querySelector<HTMLInputElement>(`[name=${name}]`)!.value);
    return Number.isFinite(written) ? Math.min(most, Math.max(least, written)) : 0;
  };
  return {
    stock: stock.value,
    count,
    used: Math.floor(number('used', 0, count - 1)),
    across: number('nudge-across', -10, 10),
    down: number('nudge-down', -10, 10),
    outlines: form.querySelector<HTMLInputElement>('[name=outlines]')!.checked,
  };
}

function setLabels(holder: HTMLElement, labels: readonly HTMLElement[], settings: LabelSettings): void {
  const { stock, count, used, across, down, outlines } = settings;
  holder.dataset['stock'] = stock;
  holder.classList.toggle('has-outlines', outlines);
  holder.style.setProperty('--nudge-across', `${across}mm`);
  holder.style.setProperty('--nudge-down', `${down}mm`);
  const places = [...Array.from({ length: used }, emptyPlace), ...labels];
  holder.replaceChildren(...inPages(places, count));
}

function emptyPlace(): HTMLElement {
  return document.createElement('div');
}

function inPages(places: readonly HTMLElement[], count: number): readonly HTMLElement[] {
  return Array.from({ length: Math.ceil(places.length / count) }, (_, i) => {
    const page = document.createElement('section');
    page.className = 'label-page';
    page.append(...places.slice(i * count, (i + 1) * count));
    return page;
  });
}
