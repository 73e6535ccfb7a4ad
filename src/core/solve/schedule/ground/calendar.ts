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
  const most = hours.stretches.length;
  for (let at = first; at <= first + most; at++) {
    const stretch = stretchAt(hours, at);
    if (!stretch) break;
    const start = Math.max(from, stretch[0]);
    if (start + length <= stretch[1]) return start;
  }
  return Infinity;
}

/** When `work` minutes (at least 1), done only while open and begun at `start` (an open minute), are done. */
export function finish(hours: OpenHours, start: number, work: number): number {
  let left = work;
  for (let at = firstToReach(hours, start + 1); ; at++) {
    const stretch = stretchAt(hours, at);
    if (!stretch) return Infinity;
    const from = Math.max(start, stretch[0]);
    if (stretch[1] - from >= left) return from + left;
    left -= stretch[1] - from;
  }
}

/**
 * The earliest minute from which `work` minutes (at least 1), done only while open, are not done before `end`. It
 * may itself be closed.
 *
 * @returns `-Infinity` where there is not so much open time before.
 */
export function startFor(hours: OpenHours, end: number, work: number): number {
  let left = work;
  for (let at = firstToReach(hours, end - 1); ; at--) {
    const stretch = stretchAt(hours, at);
    if (!stretch && at < 0) return -Infinity;
    if (!stretch) continue;
    const open = Math.min(end - 1, stretch[1]) - stretch[0];
    if (open >= left) return stretch[0] + open - left + 1;
    left -= Math.max(0, open);
  }
}

/** The length of the longest open stretch. */
export function longestStretch(hours: OpenHours): number {
  return Math.max(0, ...hours.stretches.map(([from, to]) => to - from));
}

/** Open minutes in one period (in all, where nothing repeats). */
export function openMinutes(hours: OpenHours): number {
  return hours.stretches.reduce((sum, [from, to]) => sum + to - from, 0);
}

/** Stretches are numbered through all periods; number 0 is the first of the list. */
function stretchAt({ stretches, every }: OpenHours, at: number): readonly [number, number] | undefined {
  if (every === undefined) return stretches[at];
  const period = Math.floor(at / stretches.length);
  const stretch = stretches[at - period * stretches.length];
  return stretch && [stretch[0] + period * every, stretch[1] + period * every];
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
