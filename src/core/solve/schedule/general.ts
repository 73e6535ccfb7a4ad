import type { InPieces } from '../../in-pieces.ts';
import { groundOf, type Ground } from './ground/ground.ts';
import type { ScheduleProblem, ScheduleResult } from './problem.ts';
import { searching } from './search/search.ts';

/** So many schedules are tried where a problem does not say. */
export const usualBudget = 20_000;

/**
 * A schedule of a problem of any kind, in pieces: what `schedule` makes of all that has calendars, holds or exclusions,
 * so of every plan.
 */
export function* scheduling(problem: ScheduleProblem): InPieces<ScheduleResult> {
  const ground = groundOf(problem);
  if ('impossible' in ground) return ground;
  yield;
  return yield* searched(ground, problem.budget ?? usualBudget);
}

/** What a search comes to, which proves of no problem that it has no schedule. */
export type Searched = Exclude<ScheduleResult, { readonly impossible: unknown }>;

/** The best schedule that so many tries find. */
export function* searched(ground: Ground, budget: number): InPieces<Searched> {
  const { prepared, bound } = ground;
  const lowerBound = bound - prepared.from;
  const found = yield* searching(ground, budget);
  if ('stuck' in found) return { notFound: found.stuck, lowerBound };
  const { starts, ends, score } = found;
  const late = ends.flatMap((end, job) => (end > prepared.deadlines[job]! ? [job] : []));
  if (late.length > 0) return { notFound: { because: 'deadline', jobs: late }, lowerBound };
  const makespan = score[3] - prepared.from;
  return { starts, ends, makespan, lowerBound, optimal: makespan === lowerBound };
}
