import { Bug } from '../diagnostic.ts';
import type { WorkingHours } from '../model/program.ts';
import { weekdays } from '../model/program.ts';
import { isoDate, weekdayOf } from './day.ts';
import type { ZoneTable } from './zone.ts';
import { utcOf, wallOf } from './zone.ts';

/** From the first minute to the one after the last. */
export type Stretch = readonly [from: number, to: number];

const day = 1440;
const week = 7 * day;

/**
 * The stretches in which hands may work on so many days, in order, neighbours joined. Closed days are left out.
 *
 * @param fromDay  Days since 1970-01-01 on the program's own calendar.
 * @param zone  With it the minutes are UTC since 1970; without, of the wall clock since 1970.
 */
export function openStretches(
  work: WorkingHours,
  fromDay: number,
  days: number,
  zone?: ZoneTable,
): Stretch[] {
  const stretches: Stretch[] = [];
  for (let number = fromDay; number < fromDay + days; number++) {
    if (!isWorkingDay(work, number)) continue;
    for (const [from, to] of work.hours)
      stretches.push([clock(zone, number * day + from), clock(zone, number * day + to)]);
  }
  return joined(stretches);
}

function clock(zone: ZoneTable | undefined, wallMinute: number): number {
  return zone ? utcOf(zone, wallMinute) : wallMinute;
}

/** Whether hands work on a day, counted from 1970-01-01. */
export function isWorkingDay(work: WorkingHours, number: number): boolean {
  return work.days.includes(weekdays[weekdayOf(number)]!) && !work.closed.includes(isoDate(number));
}

/** Neighbours that touch become one; what a change of the clock has left empty goes. */
function joined(stretches: readonly Stretch[]): Stretch[] {
  const result: Stretch[] = [];
  for (const [from, to] of stretches) {
    const last = result.at(-1);
    if (from >= to) continue;
    if (last && last[1] >= from) result[result.length - 1] = [last[0], Math.max(last[1], to)];
    else result.push([from, to]);
  }
  return result;
}

/** The week that undated plans are made in: minute 0 is Monday 00:00, no day is closed, and it repeats. */
export function referenceWeek(work: WorkingHours): {
  readonly open: readonly Stretch[];
  readonly every: number;
} {
  const open = work.days
    .map((name) => weekdays.indexOf(name))
    .sort((a, b) => a - b)
    .flatMap((number) => work.hours.map(([from, to]): Stretch => [number * day + from, number * day + to]));
  return { open: joined(open), every: week };
}

/**
 * When something is there that takes so many working days: ordered by closing on a working day, it comes at the
 * opening of the `count`th working day after.
 *
 *     3 working days, Mon–Fri 09:00–17:00:   ordered Thu 16:00 -> Tue 09:00     ordered Thu 18:00 -> Wed 09:00
 *
 * @param zone  With it `minute` and the result are UTC since 1970; without, of the reference week (no closed days).
 */
export function addWorkingDays(
  work: WorkingHours,
  zone: ZoneTable | undefined,
  minute: number,
  count: number,
): number {
  const hours = openHours(work);
  const isOpen = zone
    ? (number: number) => isWorkingDay(work, number)
    : (number: number) => isReferenceDay(work, number);
  const wall = zone ? wallOf(zone, minute) : minute;
  let number = nextOpen(isOpen, Math.floor(wall / day));
  if (number === Math.floor(wall / day) && wall - number * day >= hours.closing)
    number = nextOpen(isOpen, number + 1);
  if (count === 0) return Math.max(minute, clock(zone, number * day + hours.opening));
  for (let left = count; left > 0; left--) number = nextOpen(isOpen, number + 1);
  return clock(zone, number * day + hours.opening);
}

function openHours({ days, hours }: WorkingHours): { readonly opening: number; readonly closing: number } {
  const [first, last] = [hours[0], hours.at(-1)];
  if (days.length === 0 || !first || !last) throw new Bug('a program that never opens', { days, hours });
  return { opening: first[0], closing: last[1] };
}

/** Day 0 of the reference week is a Monday. */
function isReferenceDay(work: WorkingHours, number: number): boolean {
  return work.days.includes(weekdays[((number % 7) + 7) % 7]!);
}

function nextOpen(isOpen: (number: number) => boolean, from: number): number {
  let number = from;
  while (!isOpen(number)) number++;
  return number;
}
