import type { Obstacle } from '../problem.ts';
import type { Prepared } from './prepared.ts';
import { earliestBy } from './ties.ts';

/**
 * The earliest start of every job when nobody has to share anything: releases, lags and calendars alone. No schedule
 * starts a job earlier.
 *
 * Each block is settled before the blocks that wait for it; in a block, jobs push each other later until all ties
 * hold. All is monotone, so the result is the least one. A block that never settles is one that no calendar lets in:
 * see `latestSense`.
 *
 * @returns The starts, or what proves that there is no schedule.
 */
export function earliestStarts(prepared: Prepared): number[] | { impossible: Obstacle } {
  const { blocks, times, deadlines, releases } = prepared;
  const starts = [...releases];
  for (const block of blocks) {
    const late = settle(block, starts, prepared);
    if (late !== undefined) return { impossible: { because: 'calendar', jobs: late } };
    for (const job of block) {
      const end = times[job]!.end(starts[job]!);
      if (end > deadlines[job]!) return { impossible: { because: 'deadline', jobs: [job] } };
      for (const tie of prepared.outOf[job]!) {
        starts[tie.to] = Math.max(starts[tie.to]!, earliestBy(tie, starts[job]!, end, times));
      }
    }
  }
  return starts;
}

/** Moves the jobs of a block later until its calendars and ties hold; the jobs that cannot be, else nothing. */
function settle(
  block: readonly number[],
  starts: number[],
  prepared: Prepared,
): readonly number[] | undefined {
  const { times, outOf, blockOf } = prepared;
  const latest = latestSense(block, starts, prepared);
  const waiting = [...block];
  const isWaiting = new Set(block);
  for (let steps = 0; waiting.length > 0 && steps < mostSteps; steps++) {
    const job = waiting.shift()!;
    isWaiting.delete(job);
    const start = (starts[job] = times[job]!.start(starts[job]!));
    const end = start === Infinity ? Infinity : times[job]!.end(start);
    if (end === Infinity) return [job];
    if (start > latest) return block;
    for (const tie of outOf[job]!) {
      const earliest = earliestBy(tie, start, end, times);
      if (blockOf[tie.to] !== blockOf[job] || earliest <= starts[tie.to]!) continue;
      starts[tie.to] = earliest;
      if (!isWaiting.has(tie.to)) waiting.push(tie.to);
      isWaiting.add(tie.to);
    }
  }
  return undefined;
}

/** Settling stops here, without proof: what it has found by then is still never too late. */
const mostSteps = 200_000;

/**
 * The latest minute at which the least solution of a block can lie, if it has one: any solution may be moved by whole
 * periods, and two jobs of a block are never further apart than all its lags together.
 */
function latestSense(
  block: readonly number[],
  starts: readonly number[],
  { times, outOf, blockOf }: Prepared,
): number {
  const begin = Math.max(...block.map((job) => starts[job]!));
  const period = block.map((job) => times[job]!.every).reduce(leastCommonMultiple, 1);
  const apart = block
    .flatMap((job) => outOf[job]!.filter(({ to }) => blockOf[to] === blockOf[job]))
    .reduce((sum, { least }) => sum + Math.abs(least), 0);
  return begin + period + apart;
}

function leastCommonMultiple(a: number, b: number): number {
  if (a === Infinity || b === Infinity) return Infinity;
  let [x, y] = [a, b];
  while (y > 0) [x, y] = [y, x % y];
  return (a / x) * b;
}
