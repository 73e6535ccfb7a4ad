import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { excerpt, marked, marksFor } from '../../../src/browser/search/marks.ts';

const hits = (text: string, ...terms: readonly string[]): readonly string[] =>
  marked(text, marksFor(new Set(terms), []))
    .filter(({ isHit }) => isHit)
    .map((stretch) => stretch.text);

describe('marks', () => {
  it('stand on the words that were hit, with their accents and capitals', () => {
    expect(hits('La Crépine, deux CRÉPINES.', 'crepine')).toEqual(['Crépine', 'CRÉPINES']);
  });

  it('stand on the other words of a group that is treated alike, as whole phrases alone', () => {
    const marks = marksFor(new Set(['thoracostomy']), [['chest drain', 'thoracostomy']]);
    const of = (text: string) => marked(text, marks).filter(({ isHit }) => isHit);
    expect(of('A chest drain.').map(({ text }) => text)).toEqual(['chest', 'drain']);
    expect(of('The chest; a drain.')).toEqual([]);
  });

  it('lose no letter of any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.array(fc.string()), (text, terms) => {
        const stretches = marked(text, marksFor(new Set(terms), []));
        expect(stretches.map((stretch) => stretch.text).join('')).toBe(text);
      }),
    );
  });
});

describe('an excerpt', () => {
  const long = `${'before '.repeat(40)}gelatin ${'after '.repeat(40)}`.trim();
  const marks = marksFor(new Set(['gelatin']), []);

  it('is the whole of a short text', () => {
    expect(excerpt('Rain the gelatin over it.', marks)).toBe('Rain the gelatin over it.');
  });

  it('begins and ends with a word near the first hit, and says what is left out', () => {
    const piece = excerpt(long, marks);
    expect(piece).toMatch(/^… before .* gelatin after .* after …$/);
    expect(piece.length).toBeLessThan(170);
  });

  it('is the beginning where nothing is hit', () => {
    expect(excerpt(long, [])).toMatch(/^before before .* …$/);
  });
});
