import { describe, expect, it } from 'vitest';
import type { WorkingHours } from '../../../src/core/model/program.ts';
import { dayNumber } from '../../../src/core/time/day.ts';
import { addWorkingDays, openStretches, referenceWeek } from '../../../src/core/time/working-hours.ts';
import { utcOf } from '../../../src/core/time/zone.ts';
import { zoneTable } from '../../../src/reading/zone-table.ts';

const officeHours: WorkingHours = {
  days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'],
  hours: [
    [540, 750],
    [780, 1020],
  ],
  closed: ['2026-12-25'],
};
const always: WorkingHours = {
  days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
  hours: [[0, 1440]],
  closed: [],
};
const london = zoneTable('Europe/London')!;
const at = (day: string, clock: string) => {
  const [hours, minutes] = clock.split(':').map(Number);
  return dayNumber(day) * 1440 + hours! * 60 + minutes!;
};
const inLondon = (day: string, clock: string) => utcOf(london, at(day, clock));

describe('open stretches', () => {
  it('leaves out the weekend, the lunch and what is closed', () => {
    // Thu 24, Fri 25 (closed), Sat 26, Sun 27, Mon 28 December 2026
    expect(openStretches(officeHours, dayNumber('2026-12-24'), 5)).toEqual([
      [at('2026-12-24', '09:00'), at('2026-12-24', '12:30')],
      [at('2026-12-24', '13:00'), at('2026-12-24', '17:00')],
      [at('2026-12-28', '09:00'), at('2026-12-28', '12:30')],
      [at('2026-12-28', '13:00'), at('2026-12-28', '17:00')],
    ]);
  });

  it('opens at nine on the wall in summer and in winter', () => {
    // Fri 27 March is GMT, Mon 30 March is BST
    const [friday] = openStretches(officeHours, dayNumber('2026-03-27'), 1, london);
    const [monday] = openStretches(officeHours, dayNumber('2026-03-30'), 1, london);
    expect(friday![0]).toBe(at('2026-03-27', '09:00'));
    expect(monday![0]).toBe(at('2026-03-30', '08:00'));
  });

  it('is one stretch round the clock, an hour short when the clocks go forward', () => {
    expect(openStretches(always, dayNumber('2026-03-29'), 1, london).map(([from, to]) => to - from)).toEqual([
      23 * 60,
    ]);
    expect(openStretches(always, dayNumber('2026-10-24'), 3, london).map(([from, to]) => to - from)).toEqual([
      73 * 60,
    ]);
  });

  it('has no stretch where the clock skips all of it', () => {
    const night: WorkingHours = { ...always, hours: [[75, 105]] };
    expect(openStretches(night, dayNumber('2026-03-29'), 1, london).map(([from, to]) => to - from)).toEqual([
      30,
    ]);
    const skipped: WorkingHours = { ...always, hours: [[60, 120]] };
    expect(openStretches(skipped, dayNumber('2026-03-29'), 1, london)).toEqual([]);
  });
});

describe('the reference week', () => {
  it('begins on Monday, whatever the order of the days, and closes on no holiday', () => {
    const { open, every } = referenceWeek({ ...officeHours, days: ['Tue', 'Mon'] });
    expect(every).toBe(10_080);
    expect(open).toEqual([
      [540, 750],
      [780, 1020],
      [1980, 2190],
      [2220, 2460],
    ]);
  });

  it('is one stretch where the program never closes', () => {
    expect(referenceWeek(always).open).toEqual([[0, 10_080]]);
  });
});

describe('working days', () => {
  it.each([
    // 3 working days after Thursday: Fri, Mon, Tue
    ['2026-11-26', '16:00', 3, '2026-12-01', '09:00'],
    // after closing it counts from Friday: Mon, Tue, Wed
    ['2026-11-26', '17:00', 3, '2026-12-02', '09:00'],
    // a Saturday counts as the next Monday
    ['2026-11-28', '10:00', 1, '2026-12-01', '09:00'],
    // Christmas Day is closed: Thu 24 -> Mon 28
    ['2026-12-24', '09:00', 1, '2026-12-28', '09:00'],
    ['2026-11-26', '16:00', 0, '2026-11-26', '16:00'],
    ['2026-11-26', '18:00', 0, '2026-11-27', '09:00'],
  ])('ordered %s %s, %d working days: there %s %s', (day, clock, count, arrives, opening) => {
    const minute = addWorkingDays(officeHours, london, inLondon(day, clock), count);
    expect(minute).toBe(inLondon(arrives, opening));
  });

  it('counts in the reference week, over its end', () => {
    // Friday 10:00 + 1 working day: Monday 09:00 of the next week
    expect(addWorkingDays(officeHours, undefined, 4 * 1440 + 600, 1)).toBe(7 * 1440 + 540);
  });

  it('is our own fault for a program that never opens', () => {
    expect(() => addWorkingDays({ ...officeHours, days: [] }, undefined, 0, 1)).toThrow('never opens');
  });
});
