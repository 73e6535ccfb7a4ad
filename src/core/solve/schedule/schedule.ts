import { lowerBound } from './bound.ts';
import { groundOf } from './ground.ts';
import type { ScheduleProblem, ScheduleResult } from './problem.ts';
import { search } from './search.ts';

/**
 * A schedule that keeps every rule of the problem and ends early: the earliest end found, then the fewest changes from
 * one kind of job to another. Same problem, same schedule.
 *
 *     what no schedule changes -> lower bound -> one schedule by each rule -> small changes, until bound or budget
 *
 * @returns The schedule with a bound below which none can be; or what proves that there is none; or what stood in the
 *          way when none was found.
 */
export function schedule(problem: ScheduleProblem): ScheduleResult {
  const ground = groundOf(problem);
  if ('impossible' in ground) return ground;
  const bound = lowerBound(ground);
  if (typeof bound !== 'number') return bound;
  const found = search(ground, bound);
  if ('stuck' in found) return { notFound: found.stuck, lowerBound: bound };
  const { starts, ends, score } = found;
  const late = ends.flatMap((end, job) => (end > ground.prepared.deadlines[job]! ? [job] : []));
  if (late.length > 0) return { notFound: { because: 'deadline', jobs: late }, lowerBound: bound };
  return { starts, ends, makespan: score[1], lowerBound: bound, optimal: score[1] === bound };
}
