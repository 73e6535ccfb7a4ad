import { type Exact, exact, zero } from '../quantity/exact.ts';

/** What the formula counts. */
export interface Counts {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
}

/**
 * The school grade (years of school in the United States) at which an English text reads easily.
 *
 * It counts how long words and sentences are and knows nothing of their meaning: a short technical word counts as easy,
 * a list as one long sentence. Syllables are counted by rule of thumb, so take it to the nearest grade.
 *
 * @returns Exact; zero of a text without words.
 * @source Kincaid, Fishburne, Rogers, Chissom, Derivation of new readability formulas (1975), NTIS AD-A006655.
 */
export function readingGrade({ words, sentences, syllables }: Counts): Exact {
  if (words === 0 || sentences === 0) return zero;
  const [length, weight] = [exact(words).div(sentences), exact(syllables).div(words)];
  return length
    .mul(exact('0.39'))
    .add(weight.mul(exact('11.8')))
    .sub(exact('15.59'));
}

/**
 * Words, sentences and syllables of a plain English text. A sentence ends at `.`, `!`, `?` or `:` before a blank, and
 * with the text.
 */
export function countsOf(text: string): Counts {
  const sentences = text.split(/(?<![.!?:])[.!?:]+(?=\s|$)/).filter((sentence) => hasWord.test(sentence));
  const words = text.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*/gu) ?? [];
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return { words: words.length, sentences: sentences.length, syllables };
}
const hasWord = /[\p{L}\p{N}]/u;

/**
 * Groups of vowels, without an `e` at the end that is not heard; a number counts as one.
 *
 *     gel-a-tin 3      pour 1      nee-dle 2      chilled 1
 */
export function syllablesOf(word: string): number {
  const letters = word
    .toLowerCase()
    .normalize('NFD')
    .replace(/[^a-z]/g, '');
  const heard = letters
    .replace(/(?<=[^aeiouy])(?:es|ed|e)$/, (end) => (isHeard(letters, end) ? 'e' : ''))
    .replace(/^y/, '');
  return Math.max(1, heard.match(/[aeiouy]+/g)?.length ?? 0);
}

/** needl-e, want-ed, box-es: where the consonants before could not be said without it. */
function isHeard(word: string, end: string): boolean {
  const before = word.slice(0, word.length - end.length);
  if (end === 'e') return /[^aeiouy]l$/.test(before);
  return end === 'ed' ? /[td]$/.test(before) : /(?:[sxz]|ch|sh|[cg])$/.test(before);
}
