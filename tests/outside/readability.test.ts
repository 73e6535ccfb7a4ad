import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { countsOf, readingGrade, syllablesOf } from '../../src/core/statistics/readability.ts';

interface Case {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  readonly fleschKincaidGrade: number;
}
const { meta, cases } = JSON.parse(
  readFileSync(new URL('data/readability.json', import.meta.url), 'utf8'),
) as { readonly meta: { readonly source: string }; readonly cases: readonly Case[] };

/** Kincaid et al. (1975), on counts: see `meta` of the file. */
describe('the reading grade', () => {
  it('names its source', () => expect(meta.source).toContain('Kincaid et al. (1975)'));

  it.each(cases)(
    'of $words words, $sentences sentences, $syllables syllables is $fleschKincaidGrade',
    (counts) => {
      expect(readingGrade(counts).valueOf()).toBeCloseTo(counts.fleschKincaidGrade, 3);
    },
  );

  it('of nothing is zero', () => {
    expect(readingGrade(countsOf('')).valueOf()).toBe(0);
  });
});

describe('what is counted', () => {
  // syllables as a dictionary divides them (from memory)
  it.each([
    ['needle', 2],
    ['gelatin', 3],
    ['pour', 1],
    ['chilled', 1],
    ['wanted', 2],
    ['boxes', 2],
    ['gloves', 1],
    ['table', 2],
    ['the', 1],
    ['ultrasound', 3],
    ['syringe', 2],
    ['your', 1],
    ['carefully', 4],
    ['12', 1],
  ])('%s has %i syllables', (word, count) => {
    expect(syllablesOf(word)).toBe(count);
  });

  it('words, and sentences by their ends', () => {
    const text = 'Hold the probe still. Can you see the tip? Keep it in view';
    expect(countsOf(text)).toMatchObject({ words: 13, sentences: 3 });
    expect(countsOf('Weigh 3.5 g of it.')).toMatchObject({ sentences: 1 });
  });
});
