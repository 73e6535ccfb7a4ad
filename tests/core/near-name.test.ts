import { describe, expect, it } from 'vitest';
import { editDistance, nearName } from '../../src/core/near-name.ts';

describe('the nearest known name', () => {
  const known = ['hands-on', 'wait', 'watched', 'waits-at', 'use-within'];

  it.each([
    ['hands-no', 'hands-on'],
    ['hand-on', 'hands-on'],
    ['Wait', 'wait'],
    ['wiat', 'wait'],
    ['watchd', 'watched'],
    ['use_within', 'use-within'],
  ])('%s was meant as %s', (typed, meant) => {
    expect(nearName(typed, known)).toBe(meant);
  });

  it.each(['glue', 'hands', 'w', ''])('nothing near %s is known', (typed) => {
    expect(nearName(typed, known)).toBeUndefined();
  });

  it('takes the first of two that are equally near', () => {
    expect(nearName('mat', ['cat', 'hat'])).toBe('cat');
  });
});

describe('the edit distance', () => {
  // Levenshtein's own example pair (kitten, sitting) is 3; a swap of neighbours counts 1 (Damerau 1964). From memory.
  it.each([
    ['kitten', 'sitting', 3],
    ['ca', 'ac', 1],
    ['', 'abc', 3],
    ['same', 'same', 0],
  ])('from %s to %s is %i', (a, b, edits) => {
    expect(editDistance(a, b)).toBe(edits);
    expect(editDistance(b, a)).toBe(edits);
  });
});
