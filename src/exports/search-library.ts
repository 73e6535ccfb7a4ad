import { plainLetters } from '../core/plain-letters.ts';
import type { searchWords } from '../words/search.ts';
import { scriptText } from './script-text.ts';

export type PageKind = keyof typeof searchWords.kinds;

/** Something that can be found: a page, or a place on one. */
export interface FindablePage {
  /** The way to it from the edition's folder. */
  readonly href: string;
  readonly kind: PageKind;
  readonly title: string;
  /** What it is a part of: the guide of a step. Empty where it stands alone. */
  readonly of: string;
  /** One line that says what it is. */
  readonly says: string;
  /** All else that it says. */
  readonly text: string;
}

/** All that the search knows: what the script beside its page sets. */
export interface SearchLibrary {
  /** Words and phrases that mean the same here: `[['ultrasound', 'sonography']]`. */
  readonly alike: readonly (readonly string[])[];
  /** Where to look when nothing is found. */
  readonly ways: readonly (readonly [name: string, href: string])[];
  readonly pages: readonly PageRow[];
}
/** A page in the order of its fields; `also` are words that people say for words that stand on it. */
export type PageRow = readonly [
  href: string,
  kind: PageKind,
  title: string,
  of: string,
  says: string,
  text: string,
  also: string,
];

/** Words that a program treats alike: `{ ultrasound: ['sonography'] }`. */
export type SayAlso = Readonly<Record<string, readonly string[]>>;

/** Pages in the order in which the search takes them in: what is most looked for comes first. */
export function searchLibrary(
  pages: readonly FindablePage[],
  sayAlso: SayAlso,
  ways: SearchLibrary['ways'],
): SearchLibrary {
  const alike = Object.entries(sayAlso).map(([word, others]) => [word, ...others]);
  return { alike, ways, pages: pages.map((page) => pageRow(page, alike)) };
}

function pageRow(
  { href, kind, title, of, says, text }: FindablePage,
  alike: SearchLibrary['alike'],
): PageRow {
  const squeezed = text.replace(/\s+/g, ' ').trim();
  return [href, kind, title, of, says, squeezed, alsoSaid(`${title} ${says} ${squeezed}`, alike)];
}

/** The other members of each group of which one stands in the text, as a whole word or phrase. */
function alsoSaid(text: string, alike: SearchLibrary['alike']): string {
  const words = bare(text);
  const has = (phrase: string): boolean => words.includes(bare(phrase));
  return alike
    .filter((group) => group.some(has))
    .flatMap((group) => group.filter((phrase) => !has(phrase)))
    .join(' ');
}

/** Plain words between single spaces, so that a phrase is found as whole words: `" chest drain frame "`. */
function bare(text: string): string {
  return ` ${plainLetters(text)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;
}

/** The library as a classic script that sets `searchLibrary`. */
export function searchScript(library: SearchLibrary): string {
  return scriptText('searchLibrary', library);
}
