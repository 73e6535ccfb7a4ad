import fc from 'fast-check';
import { expect, it } from 'vitest';
import { freeAll, freeFirst, row, take } from '../../../../../src/core/solve/schedule/placing/row.ts';

const length = 9;

it('a row frees the first of the places that are taken, whatever was taken and freed before', () => {
  // a place to take, or: free the first, free all
  const what = fc.oneof(
    fc.nat(length - 1),
    fc.constantFrom<'first' | 'all'>('first', 'first', 'first', 'all'),
  );
  fc.assert(
    fc.property(fc.array(what, { maxLength: 40 }), (all) => {
      const [line, taken] = [row(length), new Set<number>()];
      for (const one of all) {
        if (one === 'all') {
          freeAll(line);
          taken.clear();
        } else if (one === 'first') {
          const first = taken.size === 0 ? -1 : Math.min(...taken);
          expect(freeFirst(line)).toBe(first);
          taken.delete(first);
        } else {
          take(line, one);
          taken.add(one);
        }
      }
    }),
    { numRuns: 100 },
  );
});
