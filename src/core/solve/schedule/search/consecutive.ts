import type { InPieces } from '../../../in-pieces.ts';
import { clearBoard, earliestBeside, put, timesOn, type Board } from '../ground/board.ts';
import type { Ground } from '../ground/ground.ts';
import { mostUsed } from '../ground/usage.ts';
import { interchangeable } from './interchangeable.ts';
import { compareScores, type Scored } from './score.ts';
import type { Search } from './search.ts';

/**
 * The same schedule, in which jobs that are interchangeable have changed places so that their numbers run on in each
 * block of somebody's work, or at least from earlier to later, as far as all rules allow.
 *
 *     b1 |=cut 3=|=cut 1=|=cut 5=|        b1 |=cut 1=|=cut 2=|=cut 3=|
 *     b2 |=cut 2=|=cut 4=|=cut 6=|   ->   b2 |=cut 4=|=cut 5=|=cut 6=|
 */
export function* consecutive({ ground, placer, judge }: Search, given: Scored): InPieces<Scored> {
  const { board } = placer.making;
  let best = given;
  const tryOut = (changed: readonly (readonly number[])[], keyOf: (job: number) => number): boolean => {
    judge.score(best);
    const starts = renumbered(ground, best, changed, keyOf);
    if (!isKept(board, starts)) return false;
    const score = judge.score(board);
    if (compareScores(score, best.score, 4) > 0) return false;
    best = { ...timesOn(board), score };
    return true;
  };
  const leader = leaders(ground);
  const byBlock = (job: number): number => judge.blockOf[leader[job]!]!;
  const byTime = (): number => 0;
  const sets = interchangeable(ground);
  if (tryOut(sets, byBlock)) return best;
  yield;
  tryOut(sets, byTime);
  for (const set of sets.slice(0, mostTries)) {
    yield;
    if (tryOut([set], byBlock)) continue;
    yield;
    tryOut([set], byTime);
  }
  return best;
}

/** More sets than this are not tried one by one. */
const mostTries = 50;

/** For each job itself; for one that takes no crew the job of its kind that it follows. */
function leaders({ prepared }: Ground): number[] {
  const { into, isCrew, kinds, durations } = prepared;
  return durations.map((_, job) => {
    const led = isCrew[job]
      ? undefined
      : into[job]!.find(({ from }) => isCrew[from] && kinds[from] === kinds[job]);
    return led?.from ?? job;
  });
}

/** The starts when the blocks of each set have taken each other's places: the first in order of key and time is the first. */
function renumbered(
  { prepared: { blocks } }: Ground,
  { starts }: Scored,
  sets: readonly (readonly number[])[],
  keyOf: (job: number) => number,
): Float64Array {
  const changed = Float64Array.from(starts);
  for (const set of sets) {
    const jobs = set.map((block) => blocks[block]!);
    const order = jobs.toSorted(([a], [b]) => keyOf(a!) - keyOf(b!) || starts[a!]! - starts[b!]!);
    jobs.forEach((block, place) => block.forEach((job, at) => (changed[job] = starts[order[place]![at]!]!)));
  }
  return changed;
}

/**
 * Puts all on the board; whether that keeps every rule, if it did before jobs that are alike have changed places. What is
 * past its deadline is for the score.
 */
function isKept(board: Board, starts: ArrayLike<number>): boolean {
  const { prepared, usages, ground } = board;
  clearBoard(board);
  for (let job = 0; job < starts.length; job++) put(board, job, starts[job]!);
  for (let job = 0; job < starts.length; job++) {
    if (earliestBeside(board, job, prepared.releases[job]!) > starts[job]!) return false;
  }
  return ground.problem.capacities.every((capacity, resource) => mostUsed(usages[resource]!) <= capacity);
}
