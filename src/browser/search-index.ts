import MiniSearch from 'minisearch';

/** A page as the search knows it, in the order in which the shipped script lists its fields. */
export interface FoundPage {
  readonly href: string;
  readonly kind: 'guide' | 'material' | 'tool' | 'page';
  readonly title: string;
  readonly says: string;
}
export type DocumentRow = readonly [
  href: string,
  kind: FoundPage['kind'],
  title: string,
  says: string,
  words: string,
];

/** Answers a query with pages, best first. */
export type Search = (query: string) => readonly FoundPage[];

/** The longest that a stretch of work may hold the page up, in milliseconds. */
const stretchOfWork = 8;

/**
 * A search over all pages. The index is made here, in stretches after which the page may draw and answer, since a
 * page that was opened from a disk may start no worker.
 *
 * @param pause  Comes back when the page has had its turn.
 * @param clock  Milliseconds, for the length of a stretch alone.
 */
export async function makeSearch(
  rows: readonly DocumentRow[],
  pause: () => Promise<void>,
  clock: () => number,
): Promise<Search> {
  const index = new MiniSearch<FoundPage & { readonly id: number; readonly words: string }>({
    fields: ['title', 'says', 'words'],
    storeFields: ['href', 'kind', 'title', 'says'],
    processTerm: plain,
  });
  let began = clock();
  for (const [id, [href, kind, title, says, words]] of rows.entries()) {
    index.add({ id, href, kind, title, says, words });
    if (clock() - began > stretchOfWork) {
      await pause();
      began = clock();
    }
  }
  return (query) => index.search(query, options) as unknown as readonly FoundPage[];
}

/**
 * One letter may be wrong in words of four letters or more, two in words of seven or more; a word may be unfinished.
 * Titles count most. Words that all stand on a page come before words of which some do.
 */
const options = {
  boost: { title: 4, says: 2 },
  prefix: (term: string) => term.length > 1,
  fuzzy: (term: string) => (term.length > 6 ? 2 : term.length > 3 ? 1 : 0),
  combineWith: 'AND',
} as const;

/** Without accents and case. */
function plain(term: string): string {
  return term.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}
