import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact } from '../../../src/core/quantity/exact.ts';
import { readDuration, readKeeping } from '../../../src/core/time/duration.ts';
import { minutesUp, printDuration, secondsOf } from '../../../src/core/time/minutes.ts';
import { problemOf, valueOf } from '../quantity/readings.ts';

describe('a length of time', () => {
  it.each([
    ['45 min', { seconds: '2700' }],
    ['2 h 30 min', { seconds: '9000' }],
    ['2h 30min', { seconds: '9000' }],
    ['2 hours and 5 minutes', { seconds: '7500' }],
    ['1.5 h', { seconds: '5400' }],
    ['1/2 h', { seconds: '1800' }],
    ['1 d', { seconds: '86400' }],
    ['2 weeks', { seconds: '1209600' }],
    ['40–60 min', { seconds: '3600', least: '2400' }],
    ['40 to 60 s', { seconds: '60', least: '40' }],
    ['90 min - 2 h', { seconds: '7200', least: '5400' }],
    ['3 working days', { workingDays: 3 }],
    ['1 working day', { workingDays: 1 }],
    ['PT2H30M', { seconds: '9000' }],
    ['P1W2DT0.5S', { seconds: '1555201/2' }],
  ])('reads %s', (text, duration) => {
    expect(valueOf(readDuration(text))).toEqual(duration);
  });

  it.each([
    ['overnight', 'duration-vague', {}],
    ['until dry', 'duration-vague', {}],
    ['', 'duration-vague', {}],
    ['24 months', 'duration-calendar.months', { number: '24', months: '24' }],
    ['2 years', 'duration-calendar.years', { number: '2', months: '24' }],
    ['P1M', 'duration-calendar.months', { number: '1', months: '1' }],
    ['P1Y2M', 'duration-calendar.years', { number: '1', months: '14' }],
    ['12:30', 'clock-time-as-amount', { clock: '12:30' }],
    ['45', 'unit-missing.time', { number: '45' }],
    ['5 m', 'unit-wrong.time', { unit: 'm' }],
    ['60–40 min', 'range-reversed', { least: '60 min', most: '40 min' }],
    ['45 ± 5 min', 'range-not-here.tolerance', {}],
    ['-5 min', 'amount-negative', {}],
    ['1,5 h', 'decimal-comma', { point: '1.5 h', thousands: '15 h' }],
    ['1.5 working days', 'amount-not-whole', {}],
    ['2–3 working days', 'range-not-here', {}],
    ['2h30', 'amount-unreadable', {}],
    ['PT1.5H3M', 'amount-unreadable.iso', {}],
    ['P1DT', 'amount-unreadable.iso', {}],
  ])('says what is wrong with %s', (text, code, facts) => {
    expect(problemOf(readDuration(text))).toEqual([code, facts]);
  });

  it('keeps for months of the calendar, but for no years', () => {
    expect(valueOf(readKeeping('24 months'))).toEqual({ months: '24' });
    expect(valueOf(readKeeping('5 d'))).toEqual({ seconds: '432000' });
    expect(problemOf(readKeeping('2 years'))[0]).toBe('duration-calendar.years');
    expect(problemOf(readKeeping('6–12 months'))[0]).toBe('range-not-here');
  });

  it('rounds a job up to a whole minute, once', () => {
    expect([0, 1, 60, 61].map((seconds) => minutesUp(exact(seconds)))).toEqual([0, 1, 1, 2]);
    expect(() => secondsOf({ workingDays: 3 })).toThrow('no fixed length');
  });

  it.each([
    [0, 'PT0S'],
    [45, 'PT45M'],
    [60, 'PT1H'],
    [150, 'PT2H30M'],
    [4000, 'PT66H40M'],
  ])('prints %d minutes as %s', (minutes, text) => {
    expect(printDuration(minutes)).toBe(text);
  });

  it('reads back what it printed', () => {
    fc.assert(
      fc.property(fc.nat(10_000_000), (minutes) => {
        expect(valueOf(readDuration(printDuration(minutes)))).toEqual({ seconds: String(minutes * 60) });
      }),
    );
  });

  it('reads or refuses any text, and never throws', () => {
    const pieces = [
      'P',
      'T',
      '1',
      '0',
      ',',
      '.',
      'H',
      'M',
      'S',
      'W',
      'D',
      'Y',
      ' h',
      ' min',
      ' ',
      '–',
      ' working days',
      ' months',
      ' years',
      '-',
    ];
    const likely = fc.array(fc.constantFrom(...pieces), { maxLength: 10 }).map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), likely), (text) => {
        for (const reading of [readDuration(text), readKeeping(text)]) {
          if (!reading.ok) expect(reading.problem.facts['text']).toBe(text.trim());
        }
      }),
      { numRuns: 3000 },
    );
  });
});
