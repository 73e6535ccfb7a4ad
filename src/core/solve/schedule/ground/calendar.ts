import type { Calendar } from '../problem.ts';

/** A calendar made ready for look-up: stretches that touch are joined, also from one period into the next. */
export interface OpenHours {
  readonly stretches: readonly (readonly [from: number, to: number])[];
  /** Minutes after which all repeats, backwards as well as forwards; absent where it does not. */
  readonly every?: number;
}

/** The hours of a calendar; `undefined` where it is open round the clock. */
export function openHours(calendar: Calendar): OpenHours | undefined {
  const joined = joinTouching(calendar.open.filter(([from, to]) => from < to));
  if (calendar.every === undefined) return { stretches: joined };
  const [first, last] = [joined[0], joined.at(-1)];
  if (!first || !last) return { stretches: [] };
  if (last[1] < first[0] + calendar.every) return { stretches: joined, every: calendar.every };
  if (joined.length === 1) return undefined;
  return { stretches: [...joined.slice(1, -1), [last[0], first[1] + calendar.every]], every: calendar.every };
}

function joinTouching(open: Calendar['open']): [number, number][] {
  const joined: [number, number][] = [];
  for (const [from, to] of open) {
    const last = joined.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else joined.push([from, to]);
  }
  return joined;
}

/**
 * The earliest start, not before `from`, of `length` minutes that lie in one open stretch.
 *
 *     from   v                     not before 11:45, 30 min long
 *     open  |======12:00|   |12:30========|   ->  12:30
 *
 * @param length  Zero may lie at the very end of a stretch.
 * @returns `Infinity` where no stretch is long enough.
 */
export function fit(hours: OpenHours, from: number, length: number): number {
  const first = firstToReach(hours, from + length);
  const last = lastOf(hours, first);
  for (let at = first; at <= last; at++) {
    const start = Math.max(from, edgeAt(hours, at, 0));
    if (start + length <= edgeAt(hours, at, 1)) return start;
  }
  return Infinity;
}

/** When `work` minutes (at least 1), done only while open and begun at `start` (an open minute), are done. */
export function finish(hours: OpenHours, start: number, work: number): number {
  let left = work;
  for (let at = firstToReach(hours, start + 1); isStretch(hours, at); at++) {
    const from = Math.max(start, edgeAt(hours, at, 0));
    const open = edgeAt(hours, at, 1) - from;
    if (open >= left) return from + left;
    left -= open;
  }
  return Infinity;
}

/**
 * The earliest minute from which `work` minutes (at least 1), done only while open, are not done before `end`. It
 * may itself be closed.
 *
 * @returns `-Infinity` where there is not so much open time before.
 */
export function startFor(hours: OpenHours, end: number, work: number): number {
  let left = work;
  const first = firstToReach(hours, end - 1);
  for (let at = isStretch(hours, first) ? first : first - 1; isStretch(hours, at); at--) {
    const from = edgeAt(hours, at, 0);
    const open = Math.min(end - 1, edgeAt(hours, at, 1)) - from;
    if (open >= left) return from + open - left + 1;
    left -= Math.max(0, open);
  }
  return -Infinity;
}

/** Open minutes in one period (in all, where nothing repeats). */
export function openMinutes(hours: OpenHours): number {
  return hours.stretches.reduce((sum, [from, to]) => sum + to - from, 0);
}

/** Stretches are numbered through all periods; number 0 is the first of the list. */
function isStretch({ stretches, every }: OpenHours, at: number): boolean {
  return every === undefined ? at >= 0 && at < stretches.length : stretches.length > 0;
}

/** When a stretch opens (0) or closes (1). */
function edgeAt({ stretches, every }: OpenHours, at: number, edge: 0 | 1): number {
  if (every === undefined) return stretches[at]![edge];
  const period = Math.floor(at / stretches.length);
  return stretches[at - period * stretches.length]![edge] + period * every;
}

/** The last stretch worth a look from one on: after a whole period all repeats. */
function lastOf({ stretches, every }: OpenHours, first: number): number {
  return every !== undefined && stretches.length > 0 ? first + stretches.length : stretches.length - 1;
}

/** The number of the first stretch that ends at `minute` or later. */
function firstToReach({ stretches, every }: OpenHours, minute: number): number {
  if (stretches.length === 0) return 0;
  const period = every === undefined ? 0 : Math.floor((minute - stretches[0]![0]) / every);
  const local = minute - period * (every ?? 0);
  let [low, high] = [0, stretches.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (stretches[middle]![1] >= local) high = middle;
    else low = middle + 1;
  }
  return period * stretches.length + low;
}
