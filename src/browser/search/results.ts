import type { PageKind, SearchLibrary } from '../../exports/search-library.ts';
import { searchWords as words } from '../../words/search.ts';
import { said } from '../said.ts';
import { type Found, type Hit, nearWords } from './find.ts';
import { type Marks, excerpt, marked, marksFor } from './marks.ts';

/** How many results a place has room for. */
export interface Room {
  readonly ofKind: number;
  readonly inAll: number;
}

/** What results need to know of where they will stand. */
export interface ResultsPlace {
  readonly page: Document;
  readonly root: string;
  readonly library: SearchLibrary;
  readonly room: Room;
  /** Asks for something else in the reader's stead. */
  readonly askFor: (query: string) => void;
}

/** The sentence that says what was found. */
export function foundSentence({ hits, onlySome }: Found, query: string): string {
  const [first] = hits;
  if (!first) return said(words.none, { query });
  const texts = { query, count: String(hits.length), first: first.page[2] };
  if (onlySome) return said(hits.length === 1 ? words.oneOfSome : words.some, texts);
  return said(hits.length === 1 ? words.one : words.many, texts);
}

/** Results by kind, the kind of the best first; the best of all stands first. */
export function resultGroups({ hits }: Found, place: ResultsPlace): readonly HTMLElement[] {
  const groups = new Map<PageKind, Hit[]>();
  for (const hit of hits) {
    const kind = hit.page[1];
    groups.set(kind, groups.get(kind) ?? []);
    groups.get(kind)!.push(hit);
  }
  let room = place.room.inAll;
  return [...groups].flatMap(([kind, ofKind]) => {
    const shown = ofKind.slice(0, Math.min(place.room.ofKind, room));
    room -= shown.length;
    return shown.length === 0 ? [] : [group(kind, ofKind, shown.length, place)];
  });
}

function group(kind: PageKind, hits: readonly Hit[], most: number, place: ResultsPlace): HTMLElement {
  const { page } = place;
  const id = `found-${kind}`;
  const head = element(page, 'p', { className: 'found-kind', id, textContent: words.kinds[kind] });
  const list = element(page, 'ul', { className: 'found-list' });
  list.setAttribute('aria-labelledby', id);
  list.append(...hits.slice(0, most).map((hit) => entry(hit, place)));
  const whole = element(page, 'div', { className: 'found-group' });
  whole.append(head, list);
  if (hits.length > most && !Number.isFinite(place.room.inAll)) {
    whole.append(moreButton(kind, hits, most, list, place));
  }
  return whole;
}

/** Brings the rest of a long group, and gives the keyboard to the first of it. */
function moreButton(
  kind: PageKind,
  hits: readonly Hit[],
  most: number,
  list: HTMLElement,
  place: ResultsPlace,
): HTMLElement {
  const text = said(words.more, { count: String(hits.length), kind: words.kinds[kind].toLowerCase() });
  const button = element(place.page, 'button', {
    type: 'button',
    className: 'found-more',
    textContent: text,
  });
  button.addEventListener('click', () => {
    list.append(...hits.slice(most).map((hit) => entry(hit, place)));
    button.remove();
    list.children[most]?.querySelector('a')?.focus();
  });
  return button;
}

function entry({ page: [href, , title, of, says, text], terms }: Hit, place: ResultsPlace): HTMLElement {
  const { page, root, library } = place;
  const marks = marksFor(new Set(terms), library.alike);
  const link = element(page, 'a', { href: root + href });
  link.append(withMarks(page, 'found-name', title, marks));
  if (of !== '') link.append(withMarks(page, 'found-of', of, marks));
  const item = element(page, 'li', {});
  item.append(link, withMarks(page, 'found-line', lineOf(says, text, marks), marks));
  return item;
}

/** Its own line where that holds a hit or nothing else does; else a piece of its text. */
function lineOf(says: string, text: string, marks: Marks): string {
  const isHit = (line: string): boolean => marked(line, marks).some((stretch) => stretch.isHit);
  return isHit(says) || (says !== '' && !isHit(text)) ? excerpt(says, marks) : excerpt(text, marks);
}

function withMarks(page: Document, className: string, text: string, marks: Marks): HTMLElement {
  const holder = element(page, 'span', { className });
  holder.append(
    ...marked(text, marks).map(({ text: stretch, isHit }) =>
      isHit ? element(page, 'mark', { textContent: stretch }) : stretch,
    ),
  );
  return holder;
}

/** What to do where nothing is found: words that are here, and the pages that list everything. */
export function waysOn(query: string, place: ResultsPlace): readonly HTMLElement[] {
  const { page, root, library, askFor } = place;
  const near = nearWords(query, library).map((word) => {
    const button = element(page, 'button', { type: 'button', textContent: word });
    button.addEventListener('click', () => askFor(word));
    return button;
  });
  const ways = library.ways.map(([name, href]) =>
    element(page, 'a', { href: root + href, textContent: name }),
  );
  return [
    ...(near.length > 0 ? [wayGroup(page, 'near', words.near, near)] : []),
    wayGroup(page, 'elsewhere', words.elsewhere, ways),
  ];
}

function wayGroup(page: Document, name: string, head: string, ways: readonly HTMLElement[]): HTMLElement {
  const whole = element(page, 'div', { className: `found-ways found-${name}` });
  const list = element(page, 'ul', {});
  list.append(
    ...ways.map((way) => {
      const item = element(page, 'li', {});
      item.append(way);
      return item;
    }),
  );
  whole.append(element(page, 'p', { className: 'found-kind', textContent: head }), list);
  return whole;
}

/** All results, on the page of the search. */
export function allFound(page: Document, root: string, query: string, count: number): HTMLAnchorElement {
  return element(page, 'a', {
    className: 'found-all',
    href: `${root}search/index.html?q=${encodeURIComponent(query)}`,
    textContent: said(words.allFound, { count: String(count) }),
  });
}

function element<Tag extends keyof HTMLElementTagNameMap>(
  page: Document,
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]>,
): HTMLElementTagNameMap[Tag] {
  return Object.assign(page.createElement(tag), properties);
}
