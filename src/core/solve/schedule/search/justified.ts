import type { InPieces } from '../../../in-pieces.ts';
import { timesOn } from '../ground/board.ts';
import { basisOf } from '../ground/ground.ts';
import { mirrored, mirroredTimes, type Times } from '../mirrored.ts';
import { place, placer, type Placer } from '../placing/placing.ts';
import type { ScheduleProblem } from '../problem.ts';
import { rankOf } from './rules.ts';

/**
 * Schedules in which every job is as early as those that begin before it in another one allow, and which end no later.
 *
 *     |saw|     |drill|  |paint|   ->   |saw|drill|paint|
 *
 * @param inLine  One schedule is tried for each: whether no work of the crew begins before what began before it.
 */
export function* asEarly(
  problem: ScheduleProblem,
  times: Times,
  inLine: readonly boolean[],
): InPieces<readonly Times[]> {
  const basis = basisOf(problem);
  if ('impossible' in basis) return [];
  yield;
  return yield* asEarlyBy(placer(basis), times, inLine);
}

/** The same, made by what makes schedules of the problem. */
export function* asEarlyBy(
  placing: Placer,
  times: Times,
  inLine: readonly boolean[],
): InPieces<readonly Times[]> {
  const { starts, ends } = times;
  const rank = rankOf([...starts.keys()].sort((a, b) => starts[a]! - starts[b]! || ends[a]! - ends[b]!));
  const most = { work: 4 * rank.length + 100, end: lastEnd(times), late: 0 };
  const found: Times[] = [];
  for (const keep of inLine) {
    if (!place(placing, rank, most, keep)) found.push(timesOn(placing.making.board));
    yield;
  }
  return found;
}

/** The mirror image of that: as late as those that end after it allow, and nothing after the last end. */
export function* asLate(
  problem: ScheduleProblem,
  times: Times,
  inLine: readonly boolean[],
): InPieces<readonly Times[]> {
  const at = lastEnd(times);
  const deadlines = times.ends.map((_, job) => Math.min(problem.deadlines?.[job] ?? Infinity, at));
  const images = yield* asEarly(mirrored({ ...problem, deadlines }, at), mirroredTimes(times, at), inLine);
  return images.map((image) => mirroredTimes(image, at));
}

function lastEnd({ ends }: Times): number {
  return ends.reduce((latest, end) => Math.max(latest, end), -Infinity);
}
