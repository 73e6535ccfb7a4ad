import { termOf, wordsIn } from './term.ts';

/** A stretch of a text, hit or not. */
export interface Stretch {
  readonly text: string;
  readonly isHit: boolean;
}

/** Which words of a text are hit: by index into its words. */
type Hits = ReadonlySet<number>;

/** Phrases that are to be marked, each as the terms of its words. */
export type Marks = readonly (readonly string[])[];

/**
 * What to mark for the terms that were hit: each of them, and where one is among words that are treated alike, the
 * other members of that group.
 */
export function marksFor(terms: ReadonlySet<string>, alike: readonly (readonly string[])[]): Marks {
  const groups = alike.map((group) => group.map((phrase) => wordsIn(phrase).map(({ word }) => termOf(word))));
  const meant = groups.filter((group) => group.some((phrase) => phrase.every((term) => terms.has(term))));
  return [...[...terms].map((term) => [term]), ...meant.flat()];
}

/** A text in stretches, with the words that were hit apart; put together they are the text, accents and all. */
export function marked(text: string, marks: Marks): readonly Stretch[] {
  const words = wordsIn(text);
  const stretches: Stretch[] = [];
  let done = 0;
  for (const i of [...hitsIn(words, marks)].sort((a, b) => a - b)) {
    const { word, at } = words[i]!;
    stretches.push({ text: text.slice(done, at), isHit: false }, { text: word, isHit: true });
    done = at + word.length;
  }
  return [...stretches, { text: text.slice(done), isHit: false }].filter((stretch) => stretch.text !== '');
}

function hitsIn(words: ReturnType<typeof wordsIn>, marks: Marks): Hits {
  const terms = words.map(({ word }) => termOf(word));
  const hits = new Set<number>();
  for (const phrase of marks) {
    terms.forEach((_, i) => {
      if (phrase.every((term, j) => terms[i + j] === term)) phrase.forEach((_, j) => hits.add(i + j));
    });
  }
  return hits;
}

/** About so many letters of a text make an excerpt, and so many stand before the first hit. */
const excerptLength = 150;
const before = 50;

/** A piece of a text round its first hit, from word to word; its beginning where nothing is hit. */
export function excerpt(text: string, marks: Marks): string {
  const words = wordsIn(text);
  const first = Math.min(...hitsIn(words, marks));
  const hit = words[Number.isFinite(first) ? first : 0]?.at ?? 0;
  if (text.length <= excerptLength) return text;
  const begin = words.find(({ at }) => at >= hit - before)?.at ?? 0;
  const from = begin < before ? 0 : begin;
  const last = words.filter(({ at, word }) => at + word.length <= from + excerptLength).at(-1);
  const to = last ? last.at + last.word.length : from + excerptLength;
  return `${from > 0 ? '… ' : ''}${text.slice(from, to)}${to < text.length ? ' …' : ''}`;
}
