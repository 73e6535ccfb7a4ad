import { plannerWords as words } from '../../words/planner.ts';
import { atLevel } from './kept-settings.ts';

/** The settings in the address, so that it can be sent on; some hosts forbid it, which does no harm. */
export function writeAddress(page: Document, query: string): void {
  const { pathname, hash } = page.location;
  try {
    page.defaultView?.history.replaceState(null, '', `${query === '' ? pathname : `?${query}`}${hash}`);
  } catch {
    return;
  }
}

/** The ways to the pages of the other levels carry the settings along. */
export function carryAlong(page: Document, query: string, level: string): void {
  for (const link of page.querySelectorAll<HTMLAnchorElement>('a[data-to-level]')) {
    const there = atLevel(new URLSearchParams(query), level, link.dataset['toLevel']!).toString();
    const [path = ''] = link.getAttribute('href')!.split('?');
    link.setAttribute('href', there === '' ? path : `${path}?${there}`);
  }
}

/** The ways to the sheets carry them too: a sheet follows what its address says. */
export function carryToSheets(page: Document, query: string): void {
  for (const link of page.querySelectorAll('a[data-to-sheet]')) {
    const [path = ''] = link.getAttribute('href')!.split('?');
    link.setAttribute('href', query === '' ? path : `${path}?${query}`);
  }
}

/** Copies the address; where a browser does not let it, the sentence holds it to be copied by hand. */
export async function copyAddress(page: Document): Promise<string> {
  try {
    await page.defaultView!.navigator.clipboard.writeText(page.location.href);
    return words.copied;
  } catch {
    return `${words.copyHere} ${page.location.href}`;
  }
}
