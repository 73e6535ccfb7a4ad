import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addMonths, dayNumber, isDay, isoDate, weekdayOf } from '../../../src/core/time/day.ts';

it.each([
  ['1970-01-01', 0],
  ['1969-12-31', -1],
  ['2000-02-29', 11_016],
  ['2026-11-25', 20_782],
])('%s is day %d', (day, number) => {
  expect(dayNumber(day)).toBe(number);
  expect(isoDate(number)).toBe(day);
});

it('agrees with the calendar of the machine on every day of four hundred years', () => {
  const first = dayNumber('1900-01-01');
  for (let number = first; number < first + 146_097; number += 1) {
    const machine = new Date(number * 86_400_000);
    const text = machine.toISOString().slice(0, 10);
    if (isoDate(number) !== text || weekdayOf(number) !== (machine.getUTCDay() + 6) % 7)
      expect(isoDate(number)).toBe(text);
  }
  expect(isoDate(first + 146_097)).toBe('2300-01-01');
});

it.each([
  '2026-02-30',
  '2026-2-3',
  '2026-13-01',
  '2025-02-29',
  '26-01-01',
  '2026-01-01T09:00',
  '',
  '2026-00-10',
])('%s is no day', (text) => {
  expect(isDay(text)).toBe(false);
  expect(() => dayNumber(text)).toThrow('no such day');
});

it.each([
  ['2026-01-31', 1, '2026-02-28'],
  ['2028-01-31', 1, '2028-02-29'],
  ['2026-11-25', 24, '2028-11-25'],
  ['2026-11-30', 3, '2027-02-28'],
  ['2026-03-31', -1, '2026-02-28'],
  ['2026-12-15', 0, '2026-12-15'],
])('%s and %d months is %s', (day, months, later) => {
  expect(addMonths(day, months)).toBe(later);
});

it('numbers days one after another', () => {
  fc.assert(
    fc.property(fc.integer({ min: -700_000, max: 2_900_000 }), (n) => {
      expect(dayNumber(isoDate(n))).toBe(n);
    }),
  );
});
