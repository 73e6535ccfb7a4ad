import { pageWords } from '../words/pages.ts';
import { type DocumentRow, type FoundPage, type Search, makeSearch } from './search-index.ts';

const words = pageWords.find;
/** In the list below the field; the page of the search shows all. */
const mostBelowField = 6;

/** Brings the search field of a page to life, and the page of the search where this is it. */
export function startSearch(page: Document): void {
  const form = page.querySelector<HTMLFormElement>('[data-find]');
  const field = form?.querySelector('input');
  if (!form || !field) return;
  form.hidden = false;
  const search = once(() => loadSearch(page));
  const results = page.querySelector<HTMLElement>('[data-search-page]');
  field.addEventListener('focus', () => void search());
  if (results) startPage(page, form, field, results, search);
  else startField(page, form, field, search);
}

/** On the page of the search: results stand in the page, and the query in its address. */
function startPage(
  page: Document,
  form: HTMLFormElement,
  field: HTMLInputElement,
  results: HTMLElement,
  search: Loading,
): void {
  const asked = new URLSearchParams(page.location.search).get('q') ?? '';
  const answer = answering(page, results, search, Number.POSITIVE_INFINITY);
  field.value = asked;
  field.removeAttribute('aria-controls');
  form.addEventListener('submit', (event) => event.preventDefault());
  field.addEventListener('input', () => {
    remember(page, field.value);
    void answer(field.value);
  });
  if (asked !== '') void answer(asked);
}

/** On any other page: the first results stand below the field; the button leads to all of them. */
function startField(page: Document, form: HTMLFormElement, field: HTMLInputElement, search: Loading): void {
  const found = form.querySelector<HTMLElement>('.found')!;
  const answer = answering(page, found, search, mostBelowField);
  const show = (): void => {
    found.hidden = field.value.trim() === '';
    void answer(field.value);
  };
  field.addEventListener('input', show);
  field.addEventListener('focus', show);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    page.location.href = `${rootOf(page)}search/index.html?q=${encodeURIComponent(field.value.trim())}`;
  });
  form.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || found.hidden) return;
    field.focus();
    found.hidden = true;
  });
  form.addEventListener('focusout', (event) => {
    if (!form.contains(event.relatedTarget as Node | null)) found.hidden = true;
  });
}

type Loading = () => Promise<Search>;

/** Answers queries into a place of the page; of several that are under way the last one counts. */
function answering(
  page: Document,
  place: HTMLElement,
  search: Loading,
  most: number,
): (query: string) => Promise<void> {
  const says = place.querySelector<HTMLElement>('.found-says')!;
  const list = place.querySelector<HTMLElement>('.found-list')!;
  let latest = '';
  return async (query) => {
    latest = query;
    if (query.trim().length < 2) {
      list.replaceChildren();
      says.textContent = query.trim() === '' ? '' : words.short;
      return;
    }
    if (says.textContent === '') says.textContent = words.loading;
    const find = await search();
    if (latest !== query) return;
    const pages = find(query);
    says.textContent = countText(pages.length, query.trim());
    list.replaceChildren(
      ...(pages.length > 0 ? pages.slice(0, most).map((found) => entry(page, found)) : waysOn(page)),
    );
  };
}

function countText(count: number, query: string): string {
  if (count === 0) return words.none.replace('{query}', query);
  return count === 1 ? words.one : words.many.replace('{count}', String(count));
}

function entry(page: Document, { href, kind, title, says }: FoundPage): HTMLElement {
  const item = page.createElement('li');
  const link = Object.assign(page.createElement('a'), { href: rootOf(page) + href, textContent: title });
  const what = Object.assign(page.createElement('span'), {
    className: 'kind',
    textContent: words.kinds[kind],
  });
  const line = Object.assign(page.createElement('span'), { className: 'says', textContent: says });
  item.append(link, what, line);
  return item;
}

/** Where to look when nothing is found: the pages that list everything. */
function waysOn(page: Document): readonly HTMLElement[] {
  const places = [...page.querySelectorAll<HTMLAnchorElement>('.places a')];
  return places.map((place) => {
    const item = page.createElement('li');
    item.append(Object.assign(page.createElement('a'), { href: place.href, textContent: place.textContent }));
    return item;
  });
}

/** The query in the address, so that the page can be sent on; some hosts forbid it, which does no harm. */
function remember(page: Document, query: string): void {
  try {
    page.defaultView?.history.replaceState(null, '', `?q=${encodeURIComponent(query)}`);
  } catch {
    return;
  }
}

/** The documents come as a script that sets a global: nothing else loads where a page was opened from a disk. */
async function loadSearch(page: Document): Promise<Search> {
  await new Promise<void>((loaded, failed) => {
    const script = Object.assign(page.createElement('script'), { src: `${rootOf(page)}search/documents.js` });
    script.addEventListener('load', () => loaded());
    script.addEventListener('error', () => failed(new Error('the search documents did not load')));
    page.head.append(script);
  });
  const { searchDocuments } = globalThis as typeof globalThis & { searchDocuments: readonly DocumentRow[] };
  return makeSearch(searchDocuments, pause, () => performance.now());
}

const pause = (): Promise<void> => new Promise((go) => setTimeout(go));

/** The way from the page to the edition's folder. */
function rootOf(page: Document): string {
  return page.documentElement.dataset['root'] ?? '';
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}
