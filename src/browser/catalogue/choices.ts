/** What the reader chose: values by facet. Facets without a choice are absent. */
export type Choices = ReadonlyMap<string, ReadonlySet<string>>;

/** One thing by which guides differ. */
export interface Facet {
  readonly id: string;
  /** `any`: a guide with one of those chosen stays. `none`: it goes. */
  readonly keeps: 'any' | 'none';
  readonly values: readonly string[];
}

/** The choices that an address holds: `?hazard=h223&hazard=blade`. What the page does not know is left out. */
export function readChoices(query: string, facets: readonly Facet[]): Choices {
  const asked = new URLSearchParams(query);
  const known = facets.map(({ id, values }) => {
    const all = asked.getAll(id);
    return [id, new Set(values.filter((value) => all.includes(value)))] as const;
  });
  return new Map(known.filter(([, values]) => values.size > 0));
}

/** The same as the query of an address; empty for no choice in the usual order. */
export function writeChoices(choices: Choices, order: string, usualOrder: string): string {
  const query = new URLSearchParams();
  for (const [id, values] of choices) for (const value of values) query.append(id, value);
  if (order !== usualOrder) query.set('sort', order);
  const text = query.toString();
  return text === '' ? '' : `?${text}`;
}

/** Whether a guide is among those chosen: of each facet any choice, of those to leave out none. */
export function isChosen(has: ReadonlySet<string>, choices: Choices, facets: readonly Facet[]): boolean {
  return facets.every(({ id, keeps }) => {
    const values = choices.get(id);
    if (!values) return true;
    const isHit = [...values].some((value) => has.has(`${id}:${value}`));
    return isHit === (keeps === 'any');
  });
}

/** How many guides have each value (`cost:to-2`) among those that all other facets leave. */
export function countsOf(
  guides: readonly ReadonlySet<string>[],
  choices: Choices,
  facets: readonly Facet[],
): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { id, values } of facets) {
    const others = facets.filter((facet) => facet.id !== id);
    const left = guides.filter((has) => isChosen(has, choices, others));
    for (const value of values) {
      const token = `${id}:${value}`;
      counts.set(token, left.filter((has) => has.has(token)).length);
    }
  }
  return counts;
}

/** The choices without one of them. */
export function withoutChoice(choices: Choices, facet: string, value: string): Choices {
  const left = [...(choices.get(facet) ?? [])].filter((other) => other !== value);
  const others = [...choices].filter(([id]) => id !== facet);
  return new Map(left.length > 0 ? [...others, [facet, new Set(left)]] : others);
}
