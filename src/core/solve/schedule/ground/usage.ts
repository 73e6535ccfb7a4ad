/**
 * How much of one resource is in use, minute by minute, in steps: from when on, and how much. Only the first `count`
 * steps mean anything; the list is there to be used again.
 *
 *     from   -∞    540    555    600
 *     used    0     2      1      0       count 4,  steps [-∞, 0, 540, 2, 555, 1, 600, 0]
 */
export interface Usage {
  steps: Float64Array;
  count: number;
}

export function nothingUsed(): Usage {
  return { steps: new Float64Array(64).fill(-Infinity, 0, 1), count: 1 };
}

/** Gives back all that is in use. */
export function clear(usage: Usage): void {
  usage.count = 1;
}

/** Makes one usage like another. */
export function copyUsage(from: Usage, to: Usage): void {
  if (to.steps.length < from.steps.length) to.steps = new Float64Array(from.steps.length);
  to.steps.set(from.steps.subarray(0, 2 * from.count));
  to.count = from.count;
}

/** Adds `count` to the use from one minute until another (`Infinity`: for good). A count below zero gives back. */
export function occupy(usage: Usage, from: number, to: number, count: number): void {
  if (from >= to || count === 0) return;
  const first = cutAt(usage, from);
  const last = to === Infinity ? usage.count : cutAt(usage, to);
  const { steps } = usage;
  for (let at = first; at < last; at++) steps[2 * at + 1]! += count;
  joinAt(usage, last);
  joinAt(usage, first);
}

/**
 * The end of the last moment between `from` and `to` at which more than `room` is in use.
 *
 * @returns `-Infinity` where there is none: something that leaves `room` to the others fits in. `Infinity` where it
 *          never ends.
 */
export function busyUntil({ steps, count }: Usage, from: number, to: number, room: number): number {
  if (from >= to) return -Infinity;
  for (let at = before(steps, count, to); at >= 0; at--) {
    if (steps[2 * at + 1]! > room) return at + 1 < count ? steps[2 * at + 2]! : Infinity;
    if (steps[2 * at]! <= from) break;
  }
  return -Infinity;
}

/** What is in use after all that is known. */
export function usedForGood({ steps, count }: Usage): number {
  return steps[2 * count - 1]!;
}

/** The most that is in use at once. */
export function mostUsed({ steps, count }: Usage): number {
  let most = 0;
  for (let at = 0; at < count; at++) most = Math.max(most, steps[2 * at + 1]!);
  return most;
}

/** The index of the step that begins at a minute; makes one. */
function cutAt(usage: Usage, minute: number): number {
  const { count } = usage;
  const at = before(usage.steps, count, minute) + 1;
  if (at < count && usage.steps[2 * at] === minute) return at;
  if (2 * count === usage.steps.length) grow(usage);
  const { steps } = usage;
  if (at < count) steps.copyWithin(2 * at + 2, 2 * at, 2 * count);
  steps[2 * at] = minute;
  steps[2 * at + 1] = steps[2 * at - 1]!;
  usage.count++;
  return at;
}

function grow(usage: Usage): void {
  const { steps } = usage;
  usage.steps = new Float64Array(2 * steps.length);
  usage.steps.set(steps);
}

/** Joins a step to the one before where both use the same. */
function joinAt(usage: Usage, at: number): void {
  const { steps, count } = usage;
  if (at >= count || steps[2 * at + 1] !== steps[2 * at - 1]) return;
  steps.copyWithin(2 * at, 2 * at + 2, 2 * count);
  usage.count--;
}

/** The index of the last step that begins before a minute. Most are looked for near the end. */
function before(steps: Float64Array, count: number, minute: number): number {
  if (steps[2 * count - 2]! < minute) return count - 1;
  let [low, high] = [0, count - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (steps[2 * middle]! < minute) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
