import { Bug } from '../../../diagnostic.ts';
import type { ScheduleProblem } from '../problem.ts';
import { inOrder } from './in-order.ts';
import { leastLags } from './least-lags.ts';

/** A plain problem made ready. Jobs are renumbered, each after all that it waits for; minutes count from `from`. */
export interface Project {
  /** For each job its number in the problem. */
  readonly jobs: readonly number[];
  readonly durations: Float64Array;
  /** No job starts earlier, whatever the others do. */
  readonly releases: Float64Array;
  readonly waits: readonly (readonly Wait[])[];
  readonly needs: readonly (readonly Need[])[];
  readonly capacities: Float64Array;
}

/** To start at least so long after the start of a job of a lower number; below zero, at most so long before it. */
export interface Wait {
  readonly job: number;
  readonly least: number;
}

export interface Need {
  readonly resource: number;
  readonly count: number;
}

/** @throws {Bug} When a job asks for more than there is, or jobs wait for each other. */
export function projectOf(problem: ScheduleProblem): Project {
  const { durations, capacities, from = 0, releases } = problem;
  const jobs = inOrder(problem);
  const needs = jobs?.map((job) => needsOf(problem, job));
  if (!jobs || !needs || needs.flat().some(({ resource, count }) => count > capacities[resource]!))
    throw new Bug('not a plain problem with a schedule', { problem });
  return {
    jobs,
    durations: Float64Array.from(jobs, (job) => durations[job]!),
    releases: Float64Array.from(jobs, (job) => Math.max(0, (releases?.[job] ?? from) - from)),
    waits: waitsOf(problem, jobs),
    needs,
    capacities: Float64Array.from(capacities),
  };
}

function needsOf({ durations, demands }: ScheduleProblem, job: number): Need[] {
  if (durations[job] === 0) return [];
  return demands[job]!.flatMap((count, resource) => (count > 0 ? [{ resource, count }] : []));
}

function waitsOf(problem: ScheduleProblem, jobs: readonly number[]): Wait[][] {
  const numberOf: number[] = [];
  jobs.forEach((job, number) => (numberOf[job] = number));
  const waits: Wait[][] = jobs.map(() => []);
  for (const { from, to, least } of leastLags(problem))
    waits[numberOf[to]!]!.push({ job: numberOf[from]!, least });
  return waits;
}

/**
 * The same project seen from its end: time runs backwards, and the last job comes first.
 *
 *     |=== i ===|           start of j >= start of i + 4, i takes 5, j takes 3
 *         |= j =|           turned round: start of i >= start of j + 4 - 5 + 3
 *
 * Releases are left aside, so its schedules serve only as an order in which to place the jobs of the project itself.
 */
export function mirrored({ jobs, durations, waits, needs, capacities }: Project): Project {
  const last = jobs.length - 1;
  const turned: Wait[][] = jobs.map(() => []);
  waits.forEach((before, job) => {
    for (const { job: other, least } of before)
      turned[last - other]!.push({ job: last - job, least: least - durations[other]! + durations[job]! });
  });
  return {
    jobs: jobs.toReversed(),
    durations: durations.toReversed(),
    releases: new Float64Array(jobs.length),
    waits: turned,
    needs: needs.toReversed(),
    capacities,
  };
}
