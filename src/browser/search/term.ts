import { plainLetters } from '../../core/plain-letters.ts';

/**
 * A word as the search compares it: without accents and capitals, and in the singular where English has a plain one.
 *
 *     Sutures -> suture      bodies -> body      Gläser -> glaser      glass -> glass
 */
export function termOf(word: string): string {
  return singular(plainLetters(word));
}

/** Common endings of English plurals; common practice, no source. Both sides go through it, so a wrong one does no harm. */
function singular(word: string): string {
  if (word.length < 4 || /(ss|us|is)$/.test(word)) return word;
  if (/[^aeiou]ies$/.test(word)) return `${word.slice(0, -3)}y`;
  if (/(x|ch|sh|ss)es$/.test(word)) return word.slice(0, -2);
  return word.replace(/s$/, '');
}

/** The words of a text, with where each begins. */
export function wordsIn(text: string): readonly { readonly word: string; readonly at: number }[] {
  return [...text.matchAll(/[\p{L}\p{N}\p{M}]+/gu)].map(({ 0: word, index }) => ({ word, at: index }));
}
