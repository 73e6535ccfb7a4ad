import { isSetting } from './setting-names.ts';

/** The settings of one guide, as this device keeps them: those of the page of one level. */
interface Kept {
  readonly level: string;
  readonly query: string;
}

/** Where they are kept: no other site and no other guide reads them. */
export function storageKey(page: Document, guide: string): string {
  const site = new URL(page.documentElement.dataset['root'] || '.', page.location.href).pathname;
  return ['settings', site, guide].map(encodeURIComponent).join('/');
}

/**
 * The settings that a page begins with: those of its address, else those that another page of the guide has kept here.
 */
export function keptSettings({ search }: Location, key: string, level: string): URLSearchParams {
  const asked = new URLSearchParams(search);
  if ([...asked.keys()].some(isSetting)) return asked;
  const kept = readKept(key);
  return kept ? atLevel(new URLSearchParams(kept.query), kept.level, level) : new URLSearchParams();
}

/** Keeps them for the other pages of the guide; where a browser keeps nothing, they live in the address alone. */
export function keepSettings(key: string, level: string, query: string): void {
  try {
    if (query === '') localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify({ level, query } satisfies Kept));
  } catch {
    return;
  }
}

/**
 * The same settings as the page of another level writes them: what one makes, the other makes along. Of one level alone
 * the number goes with the reader.
 *
 *     shallow: batch=12&batch:deep=4   ->   deep: batch=4&batch:shallow=12
 */
export function atLevel(query: URLSearchParams, from: string, to: string): URLSearchParams {
  if (from === to || !query.has(`batch:${to}`)) return query;
  const renamed = [...query].map(([name, text]): [string, string] => {
    if (name === 'batch') return [`batch:${from}`, text];
    return name === `batch:${to}` ? ['batch', text] : [name, text];
  });
  return new URLSearchParams(renamed);
}

function readKept(key: string): Kept | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null') as Partial<Kept> | null;
    return typeof kept?.query === 'string' ? { level: kept.level ?? '', query: kept.query } : undefined;
  } catch {
    return undefined;
  }
}
