import { searchWords as words } from '../../words/search.ts';
import { leadsByArrows } from './arrows.ts';
import { rootOf } from '../load-script.ts';
import { type LoadedSearch, loadSearch } from './load.ts';
import { type Room, allFound, foundSentence, resultGroups, waysOn } from './results.ts';
import { once } from '../work/once.ts';

/** Below the field there is room for few; the page of the search has all, the first of each kind at once. */
const belowField: Room = { ofKind: 3, inAll: 8 };
const onPage: Room = { ofKind: 12, inAll: Number.POSITIVE_INFINITY };
/** After so many milliseconds without a key the sentence is said, so that it is not said at every letter. */
const silence = 350;

/** The parts of a page that searching needs. */
interface Parts {
  readonly page: Document;
  readonly form: HTMLFormElement;
  readonly field: HTMLInputElement;
  /** The sentence, for eyes and ears. */
  readonly says: HTMLElement;
  readonly results: HTMLElement;
  /** Of the page of the search, whose results are its content. */
  readonly isPage: boolean;
}

/** Brings the search field of a page to life, and the page of the search where this is it. */
export function startSearchField(page: Document): void {
  const parts = partsOf(page);
  if (!parts) return;
  const { form, field, isPage } = parts;
  form.hidden = false;
  const load = once(() => loadSearch(page));
  const answer = answering(parts, load);
  field.addEventListener('focus', () => void load().catch(() => undefined));
  field.addEventListener('input', () => void answer(field.value));
  field.addEventListener('keydown', (event) => {
    if (event.key === 'Enter' && openFirst(parts)) event.preventDefault();
  });
  leadsByArrows(field, parts.results);
  if (isPage) startPage(parts, answer);
  else startBelow(parts, answer);
}

function partsOf(page: Document): Parts | undefined {
  const form = page.querySelector<HTMLFormElement>('[data-find]');
  const field = form?.querySelector('input');
  const whole = page.querySelector<HTMLElement>('[data-search-page]');
  const place = whole ?? form;
  const says = place?.querySelector<HTMLElement>('.found-says');
  const results = place?.querySelector<HTMLElement>('.found-results');
  if (!form || !field || !says || !results) return undefined;
  return { page, form, field, says, results, isPage: whole !== null };
}

/** On the page of the search: results stand in the page, and the query in its address. */
function startPage({ page, form, field }: Parts, answer: Answer): void {
  const asked = new URLSearchParams(page.location.search).get('q') ?? '';
  field.value = asked;
  field.removeAttribute('aria-controls');
  field.addEventListener('input', () => remember(page, field.value.trim()));
  form.addEventListener('submit', (event) => event.preventDefault());
  if (asked !== '') void answer(asked);
}

/** On any other page: the best results stand below the field; the button leads to all of them. */
function startBelow({ page, form, field, results }: Parts, answer: Answer): void {
  const found = form.querySelector<HTMLElement>('.found')!;
  const show = (): void => {
    found.hidden = field.value.trim() === '';
  };
  field.addEventListener('input', show);
  field.addEventListener('focus', () => {
    show();
    if (results.childElementCount === 0) void answer(field.value);
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    page.location.href = allFound(page, rootOf(page), field.value.trim(), 0).href;
  });
  form.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || found.hidden) return;
    event.preventDefault();
    field.focus();
    found.hidden = true;
  });
  form.addEventListener('focusout', (event) => {
    if (!form.contains(event.relatedTarget as Node | null)) found.hidden = true;
  });
}

/** Opens the first result of what stands in the field. @returns Whether there was one. */
function openFirst({ field, results }: Parts): boolean {
  const isOfField = results.dataset['asked'] === field.value.trim();
  const first = isOfField ? results.querySelector<HTMLAnchorElement>('.found-list a') : null;
  first?.click();
  return first !== null;
}

type Answer = (query: string) => Promise<void>;

/** Answers queries; of several that are under way the last one counts. */
function answering(parts: Parts, load: () => Promise<LoadedSearch>): Answer {
  const { results } = parts;
  const say = saying(parts.says);
  let latest = '';
  return async (query) => {
    latest = query.trim();
    const asked = latest;
    if (asked.length < 2) {
      results.replaceChildren();
      say(asked === '' ? '' : words.short);
      return;
    }
    if (results.childElementCount === 0) say(words.looking);
    try {
      const search = await load();
      if (latest === asked && search.find(asked).hits.length > 0) show(asked, search, parts);
      await search.whole;
      if (latest === asked) say(show(asked, search, parts));
    } catch {
      say(words.broken);
      results.replaceChildren(...placesOf(parts.page));
    }
  };
}

/** Puts the results into their place. @returns The sentence that says what was found. */
function show(query: string, search: LoadedSearch, { page, field, results, isPage }: Parts): string {
  const place = {
    page,
    root: rootOf(page),
    library: search.library,
    room: isPage ? onPage : belowField,
    askFor: (other: string) => {
      field.value = other;
      field.focus();
      field.dispatchEvent(new Event('input', { bubbles: true }));
    },
  };
  const found = search.find(query);
  const isNothing = found.hits.length === 0;
  const shown = isNothing ? waysOn(query, place) : resultGroups(found, place);
  const all = isPage || isNothing ? [] : [allFound(page, place.root, query, found.hits.length)];
  results.replaceChildren(...shown, ...all);
  results.dataset['asked'] = query;
  return foundSentence(found, query);
}

/** Says a sentence once nothing else was said for a while. */
function saying(says: HTMLElement): (sentence: string) => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (sentence) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      if (says.textContent !== sentence) says.textContent = sentence;
    }, silence);
  };
}

/** Copies of the ways to the pages that list everything. */
function placesOf(page: Document): readonly Node[] {
  return [...page.querySelectorAll('.places ul')].map((places) => places.cloneNode(true));
}

/** The query in the address, so that the page can be sent on; some hosts forbid it, which does no harm. */
function remember(page: Document, query: string): void {
  try {
    page.defaultView?.history.replaceState(null, '', `?q=${encodeURIComponent(query)}`);
  } catch {
    return;
  }
}
