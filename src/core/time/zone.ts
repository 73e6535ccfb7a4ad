import { Bug } from '../diagnostic.ts';

/**
 * The clock of a place for about ten years, as plain data: from each UTC minute on, the offset of the wall clock.
 * Made by reading (which has the zone database), taken as a value by core and browser (which have none).
 */
export interface ZoneTable {
  readonly zone: string;
  /** In order; minutes since 1970-01-01T00:00Z, and minutes to add to UTC for the wall clock. The first row is the start of the table. */
  readonly changes: readonly (readonly [utcMinute: number, offset: number])[];
  /** First UTC minute that the table no longer covers. */
  readonly until: number;
}

/** Minutes to add to UTC for the wall clock at a UTC minute. @throws {Bug} Outside the table. */
export function offsetAt(table: ZoneTable, utcMinute: number): number {
  if (!covers(table, utcMinute))
    throw new Bug('outside the table of the zone', { zone: table.zone, utcMinute });
  return offsetNear(table, utcMinute);
}

/** Whether the table knows the wall clock at a UTC minute. */
export function covers(table: ZoneTable, utcMinute: number): boolean {
  return utcMinute >= table.changes[0]![0] && utcMinute < table.until;
}

/** The wall clock, in minutes since 1970 on it, at a UTC minute. */
export function wallOf(table: ZoneTable, utcMinute: number): number {
  return utcMinute + offsetAt(table, utcMinute);
}

/**
 * The UTC minute at which the wall clock shows a minute. One that it skips is moved on by the gap; of two that show
 * it, the earlier counts.
 *
 *     clocks go forward 01:00 -> 02:00    01:30 does not exist   -> 02:30
 *     clocks go back    02:00 -> 01:00    01:30 comes twice      -> the first
 *
 * @source The "compatible" disambiguation of Temporal (ECMAScript proposal); RFC 5545, 3.3.5, says the same.
 */
export function utcOf(table: ZoneTable, wallMinute: number): number {
  const before = offsetNear(table, wallMinute - minutesOfADay);
  const after = offsetNear(table, wallMinute + minutesOfADay);
  const shows = [before, after].find((offset) => offsetNear(table, wallMinute - offset) === offset);
  const utc = wallMinute - (shows ?? before);
  if (!covers(table, utc)) throw new Bug('outside the table of the zone', { zone: table.zone, wallMinute });
  return utc;
}
const minutesOfADay = 1440;

/** The offset at a minute; beyond the table, that of its nearer end. */
function offsetNear(table: ZoneTable, utcMinute: number): number {
  let [low, high] = [0, table.changes.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (table.changes[middle]![0] <= utcMinute) low = middle;
    else high = middle - 1;
  }
  return table.changes[low]![1];
}
