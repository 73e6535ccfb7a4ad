/**
 * How much of one resource is in use, minute by minute: `used[k]` from `times[k]` until `times[k + 1]`.
 *
 *     times  -∞    540    555    600
 *     used    0     2      1      0
 */
export interface Usage {
  readonly times: number[];
  readonly used: number[];
}

export function nothingUsed(): Usage {
  return { times: [-Infinity], used: [0] };
}

/** Adds `count` to the use from one minute until another (`Infinity`: for good). A count below zero gives back. */
export function occupy(usage: Usage, from: number, to: number, count: number): void {
  if (from >= to || count === 0) return;
  const first = cutAt(usage, from);
  const last = to === Infinity ? usage.times.length : cutAt(usage, to);
  for (let at = first; at < last; at++) usage.used[at]! += count;
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
  const { times, used } = usage;
  if (from >= to) return -Infinity;
  for (let at = to === Infinity ? times.length - 1 : before(times, to); at >= 0; at--) {
    if (used[at]! > room) return times[at + 1] ?? Infinity;
    if (times[at]! <= from) break;
  }
  return -Infinity;
}

/** What is in use after all that is known. */
export function usedForGood(usage: Usage): number {
  return usage.used.at(-1)!;
}

/** The index of the stretch that begins at a minute; makes one. */
function cutAt({ times, used }: Usage, minute: number): number {
  const at = before(times, minute) + 1;
  if (times[at] === minute) return at;
  times.splice(at, 0, minute);
  used.splice(at, 0, used[at - 1]!);
  return at;
}

/** Joins a stretch to the one before where both use the same. */
function joinAt({ times, used }: Usage, at: number): void {
  if (at >= times.length || used[at] !== used[at - 1]) return;
  times.splice(at, 1);
  used.splice(at, 1);
}

/** The index of the last stretch that begins before a minute. */
function before(times: readonly number[], minute: number): number {
  let [low, high] = [0, times.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle]! < minute) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
