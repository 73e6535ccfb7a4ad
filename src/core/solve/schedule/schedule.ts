import { atOnce } from '../../in-pieces.ts';
import { branch } from './exact/branch.ts';
import { isExact } from './exact/is-exact.ts';
import { searched, usualBudget, type Searched } from './general.ts';
import { groundOf, type Ground } from './ground/ground.ts';
import { isPlain } from './plain/is-plain.ts';
import { plainBound } from './plain/plain-bound.ts';
import { searchPlain } from './plain/search-plain.ts';
import type { ScheduleProblem, ScheduleResult } from './problem.ts';
import { asLate } from './search/justified.ts';

/**
 * A schedule that keeps every rule of the problem and ends early; of those that end within a thousandth of each other
 * the one with the fewest changes of task. Same problem, same schedule.
 *
 *     least lags and resources, no more  -> plain/
 *     anything else                      -> search/
 *     what is small and has no calendars -> exact/ too, with what the search has found as upper bound
 *
 * @returns The schedule with a bound below which none can be; or what proves that there is none; or what stood in the
 *          way when none was found.
 */
export function schedule(problem: ScheduleProblem): ScheduleResult {
  const ground = groundOf(problem);
  if ('impossible' in ground) return ground;
  const found = isPlain(problem) ? plainly(ground) : generally(ground);
  return isExact(problem) && !('optimal' in found && found.optimal) ? exactly(problem, found) : found;
}

function plainly({ problem, prepared, bound }: Ground): Searched {
  const { durations, from } = prepared;
  const { budget = usualBudget, placements = Infinity } = problem;
  const lowerBound = Math.max(bound - from, plainBound(problem));
  const passes = Math.min(budget, Math.floor(placements / durations.length));
  return resultOf(problem, searchPlain(problem, lowerBound, passes).starts, lowerBound);
}

function generally(ground: Ground): Searched {
  const { problem } = ground;
  const { budget = usualBudget } = problem;
  return atOnce(searched(ground, isExact(problem) ? Math.ceil(budget / searchedBefore) : budget));
}

/** One part in so many of the budget, where the rest is done exactly. */
const searchedBefore = 20;

function exactly(problem: ScheduleProblem, found: Searched): ScheduleResult {
  const branched = branch(problem, 'starts' in found ? { upper: found.makespan } : {});
  if ('impossible' in branched) return branched;
  const lowerBound = Math.max(branched.lowerBound, found.lowerBound);
  if ('starts' in branched) return resultOf(problem, branched.starts, lowerBound);
  return 'starts' in found
    ? { ...found, lowerBound, optimal: found.makespan === lowerBound }
    : { ...found, lowerBound };
}

/** For jobs that are never split: as they were placed, or where that is wanted as late as the last end lets them. */
function resultOf(problem: ScheduleProblem, starts: readonly number[], lowerBound: number): Searched {
  const { durations, from = 0, latest } = problem;
  const placed = { starts, ends: starts.map((start, job) => start + durations[job]!) };
  const times = (latest && atOnce(asLate(problem, placed, [false]))[0]) || placed;
  const makespan = times.ends.reduce((last, end) => Math.max(last, end), from) - from;
  return { ...times, makespan, lowerBound, optimal: makespan === lowerBound };
}
