import { describe, expect, it } from 'vitest';
import { exact } from '../../../src/core/quantity/exact.ts';
import { dayNumber } from '../../../src/core/time/day.ts';
import {
  type Clock,
  showDuration,
  showKeeping,
  showMinutes,
  showMoment,
  showSeconds,
} from '../../../src/showing/text/times.ts';
import { bench } from '../bench.ts';

const nbsp = '\u00a0';
const spaced = (text: string): string => text.replaceAll(' ', nbsp);

describe('lengths of time', () => {
  it.each([
    [0, '0 min'],
    [40, '40 min'],
    [60, '1 h'],
    [100, '1 h 40 min'],
    [24 * 60, '24 h'],
    [47 * 60 + 59, '47 h 59 min'],
    [48 * 60, '2 d'],
    [68 * 60, '2 d 20 h'],
    [5 * 1440 + 1, '5 d 1 min'],
  ])('%i minutes', (minutes, text) => {
    expect(showMinutes(minutes)).toBe(spaced(text));
  });

  it.each([
    ['40', '40 s'],
    ['90', '1 min 30 s'],
    ['121/2', '1 min 1 s'],
    ['600', '10 min'],
    ['601', '11 min'],
    ['43200', '12 h'],
  ])('%s seconds', (seconds, text) => {
    expect(showSeconds(exact(seconds))).toBe(spaced(text));
  });

  it('working days and months keep their own names', () => {
    expect(showDuration({ workingDays: 1 })).toBe(`1${nbsp}working day`);
    expect(showDuration({ workingDays: 3 })).toBe(`3${nbsp}working days`);
    expect(showKeeping({ months: '24' })).toBe(`24${nbsp}months`);
    expect(showKeeping({ months: '1' })).toBe(`1${nbsp}month`);
    expect(showKeeping({ seconds: '432000' })).toBe(`5${nbsp}days`);
  });
});

describe('moments', () => {
  const { zone } = bench.program;
  const week: Clock = { kind: 'reference-week', start: 540, zone };

  it.each([
    [540, 'day 1, 09:00'],
    [1439, 'day 1, 23:59'],
    [1440, 'day 2, 00:00'],
    [4 * 1440 + 605, 'day 5, 10:05'],
    [7 * 1440 + 540, 'day 8, 09:00'],
  ])('minute %i of the reference week', (minute, text) => {
    expect(showMoment(minute, week)).toBe(text);
  });

  it('counts the days of a reference week from its first working day', () => {
    expect(showMoment(1440 + 600, { ...week, start: 1440 + 540 })).toBe('day 1, 10:00');
  });

  const utc = (date: string, minute: number) => dayNumber(date) * 1440 + minute;
  const dated: Clock = { kind: 'dated', start: utc('2026-11-30', 540), zone };

  // Weekdays by the Gregorian calendar: 30 November 2026 is a Monday (from memory, and as `cal 11 2026` prints it).
  it.each([
    ['2026-11-30', 540, 'Mon 30 November, 09:00'],
    ['2026-07-01', 540, 'Wed 1 July, 10:00'], // summer time
    ['2026-06-30', 1430, 'Wed 1 July, 00:50'], // over midnight by the wall clock alone
    ['2027-01-04', 615, 'Mon 4 January 2027, 10:15'],
  ])('%s %i UTC', (date, minute, text) => {
    expect(showMoment(utc(date, minute), dated)).toBe(text);
  });
});
