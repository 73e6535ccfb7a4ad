import type { Program } from '../../model/program.ts';
import type { Keeping } from '../../model/values.ts';
import { ceil, exact } from '../../quantity/exact.ts';
import { addMonths, dayNumber, isoDate } from '../../time/day.ts';
import { wallOf } from '../../time/zone.ts';
import { type Clock, limitMinutes } from './clock.ts';

const day = 1440;
/** No month is shorter; in a week without dates nobody knows which months are meant. */
const shortestMonth = 28;
const longestMonth = 31;

/**
 * Until when something is good that was ready at a minute of the plan's clock: never longer than it keeps.
 *
 * Working days count 24 hours each. Months are those of the calendar, or 28 days each where there are no dates.
 */
export function goodUntil(ready: number, keeping: Keeping, { kind }: Clock, { zone }: Program): number {
  if (!('months' in keeping)) return ready + limitMinutes(keeping);
  const months = ceil(exact(keeping.months));
  if (kind === 'reference-week') return ready + months * shortestMonth * day;
  const wall = wallOf(zone, ready);
  const today = Math.floor(wall / day);
  const later = dayNumber(addMonths(isoDate(today), months));
  return ready + (later - today) * day;
}

/** The least minute, not before `from`, at which something may be ready that is to be good until another. */
export function readyFrom(
  from: number,
  until: number,
  keeping: Keeping,
  clock: Clock,
  program: Program,
): number {
  const isEnough = (ready: number): boolean => goodUntil(ready, keeping, clock, program) >= until;
  if (!('months' in keeping)) return Math.max(from, until - limitMinutes(keeping));
  if (isEnough(from)) return from;
  let ready = until - (ceil(exact(keeping.months)) * longestMonth + 1) * day;
  while (ready < from || !isEnough(ready)) ready += day;
  return ready;
}
