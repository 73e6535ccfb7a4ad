import fc from 'fast-check';
import { expect, it } from 'vitest';
import { covers, offsetAt, utcOf, wallOf } from '../../../src/core/time/zone.ts';

/** A made-up zone: an hour ahead from minute 10,000 to 20,000. */
const table = {
  zone: 'Made/Up',
  changes: [
    [0, 0],
    [10_000, 60],
    [20_000, 0],
  ] as const,
  until: 30_000,
};

it('knows the offset from the very minute that it changes', () => {
  expect([9_999, 10_000, 19_999, 20_000].map((minute) => offsetAt(table, minute))).toEqual([0, 60, 60, 0]);
});

it('moves on a minute that the clock skips, and takes the first of two that it repeats', () => {
  // 10,000..10,059 on the wall do not exist: 10,030 is read as 11,030 - 1,000 = UTC 10,030
  expect(utcOf(table, 10_030)).toBe(10_030);
  expect(wallOf(table, utcOf(table, 10_030))).toBe(10_090);
  // 20,000..20,059 on the wall come twice: first at UTC 19,940..19,999
  expect(utcOf(table, 20_030)).toBe(19_970);
});

it('is our own fault outside the table', () => {
  expect([covers(table, -1), covers(table, 0), covers(table, 29_999), covers(table, 30_000)]).toEqual([
    false,
    true,
    true,
    false,
  ]);
  expect(() => offsetAt(table, 30_000)).toThrow('outside the table');
  expect(() => utcOf(table, -1)).toThrow('outside the table');
});

it('finds every minute of UTC again, but the repeated hour, whose first showing it finds', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 29_999 }), (minute) => {
      const repeated = minute >= 20_000 && minute < 20_060;
      expect(utcOf(table, wallOf(table, minute))).toBe(repeated ? minute - 60 : minute);
    }),
  );
});
