import type { Program } from '../../model/program.ts';
import type { Duration } from '../../model/values.ts';
import { floor } from '../../quantity/exact.ts';
import type { Calendar } from '../../solve/schedule/problem.ts';
import { minutesOf, secondsOf } from '../../time/minutes.ts';
import { addWorkingDays, openStretches, referenceWeek } from '../../time/working-hours.ts';
import { wallOf } from '../../time/zone.ts';

/** The clock of a plan. Its problem counts minutes from `origin`. */
export interface Clock {
  readonly kind: 'reference-week' | 'dated';
  /** Monday 00:00 of the reference week (0), or the start in minutes since 1970 in UTC. */
  readonly origin: number;
  /** On the same scale as `origin`: the first opening of the reference week, or the start. */
  readonly start: number;
  /** When hands may work, counted from `origin`. */
  readonly calendar: Calendar;
  /** The longest that something can last which starts on this clock; whole minutes. */
  readonly atMost: (duration: Duration, starts: 'in-hours' | 'any-time') => number;
}

const day = 1440;

/** The week that undated plans are made in: it starts at its first opening, nothing is closed, and it repeats. */
export function referenceClock({ work }: Program): Clock {
  const { open, every } = referenceWeek(work);
  return {
    kind: 'reference-week',
    origin: 0,
    start: open[0]?.[0] ?? 0,
    calendar: { open, every },
    atMost: (duration, starts) => longest(duration, (days) => longestInWeek(work, days, starts)),
  };
}

/** @param start  Minutes since 1970 in UTC, inside the table of the zone. */
export function datedClock({ work, zone }: Program, start: number): Clock {
  const today = Math.floor(wallOf(zone, start) / day);
  const lastDay = Math.floor((zone.until + zone.changes.at(-1)![1]) / day) - 1;
  const open = openStretches(work, today, Math.max(0, lastDay - today), zone);
  const fromStart = open.map(([from, to]) => [Math.max(0, from - start), to - start] as const);
  return {
    kind: 'dated',
    origin: start,
    start,
    calendar: { open: fromStart.filter(([from, to]) => to > from) },
    atMost: (duration, starts) => longest(duration, (days) => longestInWeek(work, days, starts)),
  };
}

function longest(duration: Duration, ofWorkingDays: (days: number) => number): number {
  return 'workingDays' in duration ? ofWorkingDays(duration.workingDays) : minutesOf(duration);
}

/** So many working days, from the opening (or, any time of the day, the closing) of the worst day of the week. */
function longestInWeek(work: Program['work'], days: number, starts: 'in-hours' | 'any-time'): number {
  const hour = starts === 'in-hours' ? work.hours[0]![0] : work.hours.at(-1)![1];
  const lengths = [0, 1, 2, 3, 4, 5, 6].map((weekday) => {
    const from = addWorkingDays(work, undefined, weekday * day, 0) + hour - work.hours[0]![0];
    return addWorkingDays(work, undefined, from, days) - from;
  });
  return Math.max(...lengths);
}

/** The most that a limit allows: whole minutes rounded down, and of working days only their 24 hours each. */
export function limitMinutes(duration: Duration): number {
  if ('workingDays' in duration) return duration.workingDays * day;
  return floor(secondsOf(duration).div(60));
}
