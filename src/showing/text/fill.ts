import { Bug } from '../../core/diagnostic.ts';
import { listMarks, nouns } from '../../words/units.ts';
import { showCount } from './numbers.ts';

/** No-break space: between a number and its unit or noun, so that no line ends between them. */
export const noBreak = '\u00a0';

/** The names between braces of a sentence: `'{count} of {size}'` has `'count' | 'size'`. */
export type Blanks<Sentence extends string> = Sentence extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Blanks<Rest>
  : never;

/**
 * A sentence of the catalogue with its blanks filled.
 *
 * @throws {Bug} When a blank has no text: the sentence and its user disagree.
 */
export function fill<Sentence extends string>(
  sentence: Sentence,
  texts: Readonly<Record<Blanks<Sentence>, string>>,
): string {
  const known: Readonly<Record<string, string>> = texts;
  return sentence.replace(/\{([a-zA-Z]+)\}/g, (_, name: string) => {
    const text = known[name];
    if (text === undefined) throw new Bug('a blank of a sentence has no text', { sentence, name });
    return text;
  });
}

/** "1 model", "12 models". */
export function counted(n: number, noun: keyof typeof nouns): string {
  return `${showCount(n)}${noBreak}${n === 1 ? nouns[noun].one : nouns[noun].many}`;
}

/** "3", "3 and 4", "3, 4 and 7"; with semicolons where one of them has a comma of its own. */
export function listed(items: readonly string[]): string {
  const { comma, semicolon, and } = listMarks;
  const last = items.at(-1) ?? '';
  const mark = items.some((item) => item.includes(comma)) ? semicolon : comma;
  if (items.length < 2) return last;
  return items.slice(0, -1).join(mark) + (mark === comma ? and : mark) + last;
}

/** An id in words where the author gave no name: `oil-spray` -> "oil spray". */
export function inWords(id: string): string {
  return id.replaceAll('-', ' ');
}

/** With a capital: "Skin". */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Within a sentence: "one more builder". */
export function uncapital(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** For files that other programs read: no-break spaces would hide words from their search. */
export function plainSpaces(text: string): string {
  return text.replaceAll(noBreak, ' ');
}
