import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, exactText } from '../../../src/core/quantity/exact.ts';
import { isWithin, rangesOver, roundSums } from '../../../src/showing/text/ranges.ts';

const ladder = [1, 2, 5, 10, 20, 50, 100].map(exact);
const ranges = (...values: readonly string[]) =>
  rangesOver(values.map(exact), ladder).map(({ least, most }) => [
    least ? exactText(least) : '',
    most ? exactText(most) : '',
  ]);

describe('ranges', () => {
  // 1.20 and 1.80 lie between 1 and 2; 3 between 2 and 5; 7.50 above 5 (10 would part nothing more)
  it('have limits that read well, and none is empty', () => {
    expect(ranges('1.20', '1.80', '3', '7.50')).toEqual([
      ['', '2'],
      ['2', '5'],
      ['5', ''],
    ]);
  });

  it('are none where every value is alike', () => {
    expect(ranges('3', '4', '5')).toEqual([]);
    expect(ranges()).toEqual([]);
  });

  it('are at most five, each value lies in exactly one, and each has a value', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 100_000 }), { maxLength: 40 }), (cents) => {
        const values = cents.map((cent) => exact(cent).div(100));
        const found = rangesOver(values, roundSums);
        expect(found.length).toBeLessThanOrEqual(5);
        if (found.length === 0) return;
        for (const value of values) expect(found.filter((range) => isWithin(value, range))).toHaveLength(1);
        for (const range of found) expect(values.some((value) => isWithin(value, range))).toBe(true);
      }),
    );
  });
});
