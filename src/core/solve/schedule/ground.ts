import { earliestStarts } from './earliest.ts';
import { holdTooLarge, plainObstacle } from './impossible.ts';
import { tails } from './longest-paths.ts';
import { prepare, type Prepared } from './prepared.ts';
import type { Obstacle, ScheduleProblem } from './problem.ts';
import { waysThrough, type Way } from './ways-through.ts';

/** What all schedules of a problem have in common. */
export interface Ground {
  readonly problem: ScheduleProblem;
  readonly prepared: Prepared;
  /** No job starts earlier in any schedule. */
  readonly earliest: readonly number[];
  /** For each job the least time from its start to the end of everything. */
  readonly tails: readonly number[];
  /** For each hold and each of its `from` moments the way to its end. */
  readonly ways: readonly (readonly Way[])[];
}

/** The ground of a problem, or what proves that it has no schedule. */
export function groundOf(problem: ScheduleProblem): Ground | { impossible: Obstacle } {
  const prepared = prepare(problem);
  const plain = plainObstacle(prepared);
  if (plain) return { impossible: plain };
  const ways = waysThrough(prepared);
  const hold = holdTooLarge(prepared, ways);
  if (hold) return { impossible: hold };
  const earliest = earliestStarts(prepared);
  if ('impossible' in earliest) return earliest;
  return { problem, prepared, earliest, tails: tails(prepared), ways };
}
