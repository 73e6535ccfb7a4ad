import { lowerBound } from './bound.ts';
import { earliestStarts } from './earliest.ts';
import { holdTooLarge, plainObstacle } from './impossible.ts';
import { tails } from './longest-paths.ts';
import { prepare, type Prepared } from './prepared.ts';
import type { Obstacle, ScheduleProblem } from '../problem.ts';
import { waysThrough, type Way } from './ways-through.ts';

/** What all schedules of a problem have in common, as far as it needs no bound. */
export interface Basis {
  readonly problem: ScheduleProblem;
  readonly prepared: Prepared;
  /** No job starts earlier in any schedule. */
  readonly earliest: readonly number[];
  /** For each job the least time from its start to the end of everything. */
  readonly tails: readonly number[];
  /** For each hold and each of its `from` moments the way to its end. */
  readonly ways: readonly (readonly Way[])[];
}

/** What all schedules of a problem have in common. */
export interface Ground extends Basis {
  /** No schedule ends earlier. */
  readonly bound: number;
  /** `tails`, longer where a deadline comes before `bound`. */
  readonly urgency: readonly number[];
  /** In every schedule somebody changes so often from one kind of job to another. */
  readonly leastChanges: number;
}

/** The ground of a problem, or what proves that it has no schedule. */
export function groundOf(problem: ScheduleProblem): Ground | { impossible: Obstacle } {
  const basis = basisOf(problem);
  if ('impossible' in basis) return basis;
  const { prepared } = basis;
  const bound = lowerBound(basis);
  if (typeof bound !== 'number') return bound;
  return { ...basis, bound, urgency: tails(prepared, bound), leastChanges: leastChanges(problem, prepared) };
}

/** The same without any bound. */
export function basisOf(problem: ScheduleProblem): Basis | { impossible: Obstacle } {
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

/** Each kind has somebody who begins with it or changes to it. */
function leastChanges({ crew, capacities }: ScheduleProblem, { kinds, isCrew, durations }: Prepared): number {
  const counted = kinds.filter((kind, job) => kind >= 0 && isCrew[job] && durations[job]! > 0);
  return Math.max(0, new Set(counted).size - (crew === undefined ? 1 : capacities[crew]!));
}
