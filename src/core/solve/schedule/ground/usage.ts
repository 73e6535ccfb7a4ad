/**
 * How much of one resource is in use, minute by minute: `used[k]` from `times[k]` until `times[k + 1]`. Only the first
 * `count` of each mean anything; the arrays are there to be used again.
 *
 *     times  -∞    540    555    600
 *     used    0     2      1      0       count 4
 */
export interface Usage {
  times: Float64Array;
  used: Float64Array;
  count: number;
}

export function nothingUsed(): Usage {
  return { times: new Float64Array(32).fill(-Infinity, 0, 1), used: new Float64Array(32), count: 1 };
}

/** Gives back all that is in use. */
export function clear(usage: Usage): void {
  usage.count = 1;
}

/** Adds `count` to the use from one minute until another (`Infinity`: for good). A count below zero gives back. */
export function occupy(usage: Usage, from: number, to: number, count: number): void {
  if (from >= to || count === 0) return;
  const first = cutAt(usage, from);
  const last = to === Infinity ? usage.count : cutAt(usage, to);
  const { used } = usage;
  for (let at = first; at < last; at++) used[at]! += count;
  joinAt(usage, last);
  joinAt(usage, first);
}

/**
 * The end of the last moment between `from` and `to` at which more than `room` is in use.
 *
 * @returns `-Infinity` where there is none: something that leaves `room` to the others fits in. `Infinity` where it
 *          never ends.
 */
export function busyUntil(usage: Usage, from: number, to: number, room: number): number {
  const { times, used, count } = usage;
  if (from >= to) return -Infinity;
  for (let at = before(times, count, to); at >= 0; at--) {
    if (used[at]! > room) return at + 1 < count ? times[at + 1]! : Infinity;
    if (times[at]! <= from) break;
  }
  return -Infinity;
}

/** What is in use after all that is known. */
export function usedForGood({ used, count }: Usage): number {
  return used[count - 1]!;
}

/** The index of the stretch that begins at a minute; makes one. */
function cutAt(usage: Usage, minute: number): number {
  const { count } = usage;
  const at = before(usage.times, count, minute) + 1;
  if (at < count && usage.times[at] === minute) return at;
  if (count === usage.times.length) grow(usage);
  const { times, used } = usage;
  if (at < count) {
    times.copyWithin(at + 1, at, count);
    used.copyWithin(at + 1, at, count);
  }
  times[at] = minute;
  used[at] = used[at - 1]!;
  usage.count++;
  return at;
}

function grow(usage: Usage): void {
  const { times, used, count } = usage;
  usage.times = new Float64Array(2 * count);
  usage.used = new Float64Array(2 * count);
  usage.times.set(times);
  usage.used.set(used);
}

/** Joins a stretch to the one before where both use the same. */
function joinAt(usage: Usage, at: number): void {
  const { times, used, count } = usage;
  if (at >= count || used[at] !== used[at - 1]) return;
  times.copyWithin(at, at + 1, count);
  used.copyWithin(at, at + 1, count);
  usage.count--;
}

/** The index of the last stretch that begins before a minute. Most are looked for near the end. */
function before(times: Float64Array, count: number, minute: number): number {
  if (times[count - 1]! < minute) return count - 1;
  let [low, high] = [0, count - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! < minute) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
