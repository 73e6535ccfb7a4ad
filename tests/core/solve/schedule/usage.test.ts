import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  busyUntil,
  clear,
  copyUsage,
  mostUsed,
  nothingUsed,
  occupy,
  usedForGood,
} from '../../../../src/core/solve/schedule/ground/usage.ts';

it('says until when a resource is too busy', () => {
  const stove = nothingUsed();
  occupy(stove, 10, 20, 1);
  occupy(stove, 15, 30, 1);
  // in use: 1 from 10, 2 from 15, 1 from 20, 0 from 30
  expect(busyUntil(stove, 0, 12, 0)).toBe(20 - 5);
  expect(busyUntil(stove, 0, 100, 1)).toBe(20);
  expect(busyUntil(stove, 20, 100, 1)).toBe(-Infinity);
  expect(busyUntil(stove, 30, 100, 0)).toBe(-Infinity);
  occupy(stove, 40, Infinity, 2);
  expect(usedForGood(stove)).toBe(2);
  expect(busyUntil(stove, 0, Infinity, 1)).toBe(Infinity);
});

it('is as if nothing had been when all is given back', () => {
  const span = fc.record({ from: fc.nat(30), length: fc.nat(10), count: fc.integer({ min: 1, max: 3 }) });
  fc.assert(
    fc.property(
      fc.array(span, { maxLength: 12 }),
      fc.nat(30),
      fc.nat(10),
      fc.nat(4),
      (spans, from, length, room) => {
        const usage = nothingUsed();
        for (const each of spans) occupy(usage, each.from, each.from + each.length, each.count);
        const usedAt = (minute: number) =>
          spans.reduce((sum, s) => sum + (s.from <= minute && minute < s.from + s.length ? s.count : 0), 0);
        const busy = Array.from({ length }, (_, k) => from + k).filter((minute) => usedAt(minute) > room);
        const until = busyUntil(usage, from, from + length, room);
        if (busy.length === 0) expect(until).toBe(-Infinity);
        else {
          expect(until).toBeGreaterThan(busy.at(-1)!);
          for (let minute = busy.at(-1)!; minute < until; minute++)
            expect(usedAt(minute)).toBeGreaterThan(room);
        }
        for (const each of spans) occupy(usage, each.from, each.from + each.length, -each.count);
        expect(usage.count).toBe(nothingUsed().count);
        expect(usedForGood(usage)).toBe(0);
      },
    ),
  );
});

it('keeps as many steps as there are, and so does a copy', () => {
  // 100 jobs, each from minute 10k to 10k + 5, and one beside them all the while
  const usage = nothingUsed();
  for (let k = 99; k >= 0; k--) occupy(usage, 10 * k, 10 * k + 5, 1 + (k % 3));
  occupy(usage, 0, 1000, 1);
  expect(mostUsed(usage)).toBe(4);
  const copy = nothingUsed();
  occupy(copy, 3, 7, 9);
  copyUsage(usage, copy);
  clear(usage);
  expect([mostUsed(usage), usedForGood(usage)]).toEqual([0, 0]);
  for (let k = 0; k < 100; k++) {
    expect(busyUntil(copy, 10 * k, 10 * k + 10, 1)).toBe(10 * k + 5);
    expect(busyUntil(copy, 10 * k + 5, 10 * k + 10, 1)).toBe(-Infinity);
  }
  expect(busyUntil(copy, 0, 2000, 0)).toBe(1000);
  expect(mostUsed(nothingUsed())).toBe(0);
});

it('is not changed by what takes no time, or nothing', () => {
  const usage = nothingUsed();
  occupy(usage, 10, 10, 1);
  occupy(usage, 12, 11, 1);
  occupy(usage, 10, 20, 0);
  expect(usage.count).toBe(1);
  expect(busyUntil(usage, 0, Infinity, 0)).toBe(-Infinity);
  occupy(usage, 10, 20, 1);
  expect(busyUntil(usage, 15, 15, 0)).toBe(-Infinity);
  expect(busyUntil(usage, 19, 20, 0)).toBe(20);
  expect(busyUntil(usage, 9, 10, 0)).toBe(-Infinity);
  expect(busyUntil(usage, 9, 11, 0)).toBe(20);
});
