import MiniSearch, { type SearchResult } from 'minisearch';
import type { InPieces } from '../../core/in-pieces.ts';
import { editDistance } from '../../core/near-name.ts';
import type { PageKind, PageRow, SearchLibrary } from '../../exports/search-library.ts';
import type { Slicing } from '../work/slices.ts';
import { toItsEnd } from '../work/turns.ts';
import { termOf, wordsIn } from './term.ts';

/** A search that answers at once, as far as its index has come. */
export interface Search {
  readonly find: (query: string) => Found;
  /** The index holds every page. */
  readonly whole: Promise<void>;
}

export interface Found {
  /** Best first. */
  readonly hits: readonly Hit[];
  /** No page has every word of the query; these have some. */
  readonly onlySome: boolean;
}

export interface Hit {
  readonly page: PageRow;
  /** What of the page was hit, as the search compares words. */
  readonly terms: readonly string[];
}

/**
 * A search over all pages. The index is made here, in slices between which the page may draw and answer, since a page
 * that was opened from a disk may start no worker.
 */
export function startSearch({ pages }: Pick<SearchLibrary, 'pages'>, slicing: Slicing): Search {
  const index = emptyIndex();
  const ask = (query: string, combineWith: 'AND' | 'OR'): readonly Hit[] =>
    titlesFirst(
      index.search(query, {
        ...options,
        boostDocument: (id) => weights[pages[id as number]![1]],
        combineWith,
      }),
    ).map(({ id, terms }) => ({ page: pages[id as number]!, terms }));
  return {
    find: (query) => {
      const all = ask(query, 'AND');
      const some = all.length === 0 && wordsIn(query).length > 1 ? ask(query, 'OR') : [];
      return { hits: all.length > 0 ? all : some, onlySome: some.length > 0 };
    },
    whole: toItsEnd(filling(index, pages), slicing),
  };
}

const fields = ['title', 'also', 'says', 'of', 'text'] as const;
type Indexed = Record<(typeof fields)[number], string> & { readonly id: number };

function emptyIndex(): MiniSearch<Indexed> {
  return new MiniSearch<Indexed>({ fields: [...fields], processTerm: termOf });
}

function* filling(index: MiniSearch<Indexed>, pages: readonly PageRow[]): InPieces<void> {
  for (const [id, [, , title, of, says, text, also]] of pages.entries()) {
    index.add({ id, title, of, says, text, also });
    yield;
  }
}

/** Among so many of the best, titles are looked at: of thousands nobody sees the others. */
const looked = 300;

/** A title that has every word of the query, finished or not, is what was meant, whatever its kind. */
function titlesFirst(results: readonly SearchResult[]): readonly SearchResult[] {
  const best = results
    .slice(0, looked)
    .map((result) => ({ result, score: result.score * titleWeight(result) }));
  best.sort((a, b) => b.score - a.score);
  return [...best.map(({ result }) => result), ...results.slice(looked)];
}

function titleWeight({ queryTerms, match }: SearchResult): number {
  const inTitle = Object.keys(match).filter((term) => match[term]!.includes('title'));
  return queryTerms.every((asked) => inTitle.some((term) => term.startsWith(asked))) ? 3 : 1;
}

/** How much a page of each kind counts. */
const weights: Readonly<Record<PageKind, number>> = {
  guide: 2,
  module: 2,
  material: 1.4,
  tool: 1.4,
  step: 0.7,
  safety: 0.7,
  manual: 0.5,
};

/**
 * One letter may be wrong in words of four letters or more, two in words of seven or more; a word may be unfinished.
 * Titles count most, and a whole word more than one that only comes near. A step is found by its own words; those of its guide only help.
 */
const options = {
  boost: { title: 5, also: 4, says: 2, of: 1.5 },
  weights: { prefix: 0.5, fuzzy: 0.08 },
  prefix: (term: string) => term.length > 1,
  fuzzy: (term: string) => (term.length > 6 ? 2 : term.length > 3 ? 1 : 0),
  filter: ({ match }: { readonly match: Readonly<Record<string, readonly string[]>> }) =>
    Object.values(match).some((where) => where.some((field) => field !== 'of')),
} as const;

/** The most words that are offered in the place of one. */
const mostNear = 3;

/**
 * Words that stand in titles, nearest first: what may have been meant where nothing was found. No further than half of
 * their letters away.
 */
export function nearWords(query: string, { pages }: Pick<SearchLibrary, 'pages'>): readonly string[] {
  const asked = wordsIn(query).map(({ word }) => termOf(word));
  const known = new Map(
    pages.flatMap(([, , title]) => wordsIn(title).map(({ word }) => [termOf(word), word] as const)),
  );
  const near = [...known]
    .filter(([term]) => term.length > 3)
    .map(([term, word]) => ({ word, away: Math.min(...asked.map((one) => editDistance(one, term))) }))
    .filter(({ word, away }) => away <= Math.floor(word.length / 2));
  return near
    .sort((a, b) => a.away - b.away || (a.word < b.word ? -1 : 1))
    .slice(0, mostNear)
    .map(({ word }) => word.toLowerCase());
}
