import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  finish,
  fit,
  openHours,
  startFor,
  type OpenHours,
} from '../../../../src/core/solve/schedule/ground/calendar.ts';

/** Two stretches a day, 09:00–12:30 and 13:00–17:00, every day. */
const day: OpenHours = openHours({
  open: [
    [540, 750],
    [780, 1020],
  ],
  every: 1440,
})!;

describe('fitting work into open stretches', () => {
  it.each([
    ['starts at once while open', 600, 30, 600],
    ['may end exactly at closing time', 720, 30, 720],
    ['waits for the next opening when it would run past closing time', 721, 30, 780],
    ['waits for opening time', 0, 30, 540],
    ['waits for the next morning', 1000, 30, 1440 + 540],
    ['skips a stretch that is too short', 541, 211, 780],
    ['knows days before the first', -1440 + 600, 30, -1440 + 600],
    ['lets work of no length lie at closing time', 750, 0, 750],
    ['finds nothing that is longer than every stretch', 0, 241, Infinity],
  ])('%s', (_, from, minutes, start) => {
    expect(fit(day, from, minutes)).toBe(start);
  });

  it('finds nothing after the last stretch of a calendar that does not repeat', () => {
    expect(fit(openHours({ open: [[0, 10]] })!, 5, 6)).toBe(Infinity);
  });
});

describe('work that stops at closing time', () => {
  it.each([
    ['ends while open', 600, 30, 630],
    ['ends exactly at closing time', 720, 30, 750],
    ['goes on after the break', 720, 31, 781],
    ['goes on the next morning', 1000, 60, 1440 + 580],
  ])('%s', (_, start, minutes, end) => {
    expect(finish(day, start, minutes)).toBe(end);
  });
});

describe('open stretches that touch', () => {
  it('are one stretch', () => {
    expect(
      fit(
        openHours({
          open: [
            [0, 5],
            [5, 10],
          ],
        })!,
        0,
        8,
      ),
    ).toBe(0);
  });
  it('are one from one period into the next: Sunday evening and Monday morning', () => {
    const nights = openHours({
      open: [
        [0, 5],
        [20, 24],
      ],
      every: 24,
    })!;
    expect(fit(nights, 6, 9)).toBe(20);
    expect(fit(nights, 6, 10)).toBe(Infinity);
  });
  it('are no calendar at all when they never end', () => {
    expect(
      openHours({
        open: [
          [0, 10],
          [10, 24],
        ],
        every: 24,
      }),
    ).toBeUndefined();
  });
});

it('agrees with looking at minute after minute', () => {
  const hours = fc
    .tuple(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 6 })), {
        minLength: 1,
        maxLength: 3,
      }),
      fc.boolean(),
    )
    .map(([gaps, repeats]) => {
      let at = 0;
      const open = gaps.map(([gap, length]): [number, number] => [at + gap, (at += gap + length)]);
      return repeats ? { open, every: at } : { open };
    });
  fc.assert(
    fc.property(hours, fc.nat(40), fc.integer({ min: 1, max: 7 }), ({ open, every }, from, minutes) => {
      const ready = openHours({ open, ...(every === undefined ? {} : { every }) })!;
      const isOpen = (minute: number) => {
        const local = every === undefined ? minute : ((minute % every) + every) % every;
        return open.some(([a, b]) => a <= local && local < b);
      };
      const allOpen = (start: number) => Array.from({ length: minutes }, (_, k) => start + k).every(isOpen);
      const first = Array.from({ length: 200 }, (_, k) => from + k).find(allOpen) ?? Infinity;
      expect(fit(ready, from, minutes)).toBe(first);
      if (!isOpen(from)) return;
      let [end, left] = [from, minutes];
      for (; left > 0 && end < 400; end++) if (isOpen(end)) left--;
      expect(finish(ready, from, minutes)).toBe(left > 0 ? Infinity : end);
      if (left > 0) return;
      const earliest = startFor(ready, end, minutes);
      expect(earliest).toBeLessThanOrEqual(from);
      const earlierEnds = Array.from({ length: 60 }, (_, k) => earliest - 1 - k)
        .filter(isOpen)
        .map((start) => finish(ready, start, minutes));
      expect(earlierEnds.every((other) => other < end)).toBe(true);
    }),
  );
});
