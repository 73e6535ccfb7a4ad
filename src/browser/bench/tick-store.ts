/** When each step was ticked off, by its id: milliseconds since 1970. */
export type Ticks = Readonly<Record<string, number>>;

/** Where the ticks of one batch are kept: no other guide, level, version, batch or site reads them. */
export interface TickPlace {
  /** Address of the site's folder. */
  readonly site: string;
  readonly guide: string;
  readonly level: string;
  readonly version: string;
  readonly batch: string;
}

export function tickKey({ site, guide, level, version, batch }: TickPlace): string {
  return ['ticks', site, guide, level, version, batch].map(encodeURIComponent).join('/');
}

/** What is kept; nothing where it cannot be read, for whatever reason. */
export function keptTicks(key: string, store: () => Storage): Ticks {
  try {
    const kept: unknown = JSON.parse(store().getItem(key) ?? '{}');
    return Object.fromEntries(Object.entries(kept ?? {}).filter(([, at]) => Number.isSafeInteger(at)));
  } catch {
    return {};
  }
}

/** Keeps them. Where a browser keeps nothing, they last as long as the page. */
export function keepTicks(key: string, ticks: Ticks, store: () => Storage): void {
  try {
    if (Object.keys(ticks).length === 0) store().removeItem(key);
    else store().setItem(key, JSON.stringify(ticks));
  } catch {
    return;
  }
}
