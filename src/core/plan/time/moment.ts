import type { Diagnostic } from '../../diagnostic.ts';
import type { Program } from '../../model/program.ts';
import type { IsoDate } from '../../model/values.ts';
import { dayNumber, isDay, isoDate } from '../../time/day.ts';
import { utcOf, wallOf } from '../../time/zone.ts';
import { refusal } from '../refusal.ts';

/** A setting that is a moment of the wall clock, and what it is called on the command line. */
export interface Said {
  readonly option: '--start' | '--ready-by' | '--good-until';
  readonly time: string;
}

const day = 1440;

/**
 * A wall clock `2026-11-30T09:00` of the program as minutes since 1970 in UTC.
 *
 * @returns Or why not: nobody can read it, it lies before today or outside the table of the zone, or the clocks went
 *          forward over it.
 */
export function momentOf(said: Said, today: IsoDate, program: Program): number | Diagnostic {
  const wall = wallMinute(said.time);
  if (wall === undefined) return refusal('time-unreadable', { ...said });
  const utc = utcMinute(wall, program);
  if (utc === undefined) return outside(said, program);
  if (wallOf(program.zone, utc) !== wall) return skipped(said, wall, utc, program);
  if (said.time.slice(0, 'YYYY-MM-DD'.length) < today) return refusal('time-in-the-past', { ...said, today });
  return utc;
}

/** When a day begins, in minutes since 1970 in UTC; of a day before the table of the zone, that table. */
export function midnightOf(today: IsoDate, program: Program): number {
  return utcMinute(dayNumber(today) * day, program) ?? program.zone.changes[0]![0] + day;
}

/** As minutes since 1970 on that clock; `undefined` where it is none. */
export function wallMinute(text: string): number | undefined {
  const found = /^(\d{4}-\d{2}-\d{2})T([01]\d|2[0-3]):([0-5]\d)$/.exec(text);
  if (!found || !isDay(found[1]!)) return undefined;
  return dayNumber(found[1]!) * day + Number(found[2]) * 60 + Number(found[3]);
}

/** The same moment in UTC; `undefined` where the table of the zone does not reach a day beyond it. */
function utcMinute(wall: number, { zone }: Program): number | undefined {
  const isInside = wall - day > zone.changes[0]![0] && wall + day < zone.until;
  return isInside ? utcOf(zone, wall) : undefined;
}

function outside(said: Said, { zone, timeZone }: Program): Diagnostic {
  const first = isoDate(Math.floor(zone.changes[0]![0] / day) + 2);
  const last = isoDate(Math.floor(zone.until / day) - 2);
  return refusal('time-outside-zone', { ...said, zone: timeZone, first, last });
}

/** The clocks went forward over it. `utc` is moved on by the gap, so the change lies less than the gap before it. */
function skipped(said: Said, wall: number, utc: number, { zone }: Program): Diagnostic {
  const gap = wallOf(zone, utc) - wall;
  const change = zone.changes.find(([at]) => at > utc - gap && at <= utc)![0];
  const until = wallOf(zone, change);
  return refusal('time-skipped', { ...said, from: hour(until - gap), until: hour(until) });
}

function hour(wall: number): string {
  const ofDay = wall - Math.floor(wall / day) * day;
  return [Math.floor(ofDay / 60), ofDay % 60].map((part) => String(part).padStart(2, '0')).join(':');
}
