import type { InPieces } from '../../in-pieces.ts';
import { type Exact, ceil } from '../../quantity/exact.ts';
import type { Workspace } from '../../model/workspace.ts';
import { scheduling } from '../../solve/schedule/general.ts';
import { mirrored, mirroredResult } from '../../solve/schedule/mirrored.ts';
import type { Lag, ScheduleProblem } from '../../solve/schedule/problem.ts';
import type { Arrivals } from '../buy/arrivals.ts';
import type { Clock } from '../time/clock.ts';
import type { Lines } from '../demand/inserts.ts';
import { type Jobs, jobsOf } from './jobs.ts';
import { noSchedule } from './obstacle.ts';
import type { Run } from '../demand/plan-runs.ts';
import type { Goal } from '../demand/read-settings.ts';
import { type Resources, resourcesOf } from './resources.ts';
import type { NoSchedule } from '../result.ts';
import { type SearchFor, translate } from './translate.ts';
import { windowsOf } from './windows.ts';

/** Above so many runs there is work for a few schedules only, and none of them is improved much. */
export const improvedUpTo = 2_000;
/** Above so many no schedule is made. */
export const scheduledUpTo = 20_000;

/** So few schedules are tried where it only matters whether there is one. */
export const schedulesOfTry = 10;

/** So many jobs are placed in the usual search. Work, never seconds: the same in every browser. */
const usualPlacements = 20_000;

/** What a schedule is made of. */
export interface ToSchedule extends Lines {
  readonly runs: readonly Run[];
  readonly workspace: Workspace;
  readonly clock: Clock;
  /** Set where the plan runs backwards. */
  readonly goal?: Goal;
  readonly arrivals: Arrivals;
  readonly builders: number;
  /** How many times the usual search. */
  readonly effort: Exact;
  /** So many schedules are tried at most; no such limit where left out. */
  readonly schedules?: number;
}

/** A schedule of the runs, as the general problem has it: minutes from the clock's origin. */
export interface Scheduled {
  readonly problem: ScheduleProblem;
  readonly jobs: Jobs;
  readonly resources: Resources;
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /** Forwards no schedule ends earlier; backwards none begins later. */
  readonly bound: number;
  readonly optimal: boolean;
}

/**
 * The runs of a plan in time: forwards from the start, as early as possible; or backwards from the goal, as late as
 * possible, which is forwards in the mirror.
 */
export function* schedulingRuns(work: ToSchedule): InPieces<Scheduled | { readonly none: NoSchedule }> {
  const { lines, inserts, runs, workspace, clock, goal, builders } = work;
  const jobs = jobsOf(lines, runs, goal ? 'backwards' : 'forwards');
  const resources = resourcesOf(lines, workspace.program, builders);
  const windowOf = windowsOf({ ...work, program: workspace.program });
  const search = searchFor(work);
  const problem = pastFirst(translate({ lines, inserts, jobs, resources, clock, windowOf, search }), runs);
  const end = goal ? goal.readyBy - clock.origin : 0;
  yield;
  const found = yield* scheduling(goal ? mirrored(problem, end) : problem);
  const result = goal ? mirroredResult(found, end) : found;
  const context = { lines, jobs, resources, problem, isBackwards: goal !== undefined };
  if ('impossible' in result) return { none: noSchedule('schedule-impossible', result.impossible, context) };
  if ('notFound' in result) return { none: noSchedule('schedule-not-found', result.notFound, context) };
  const { starts, ends, lowerBound, optimal } = result;
  const bound = goal ? end - lowerBound : lowerBound;
  return { problem, jobs, resources, starts, ends, bound, optimal };
}

/** In the mirror all is as late as it can be by itself. */
function searchFor({ effort, schedules, goal }: ToSchedule): SearchFor {
  const placements = ceil(effort.mul(usualPlacements));
  return { placements, latest: !goal, ...(schedules === undefined ? {} : { budget: schedules }) };
}

/** Runs that are past lie before all others, so that what their models are in is held from the beginning. */
function pastFirst(problem: ScheduleProblem, runs: readonly Run[]): ScheduleProblem {
  const first = runs.findIndex(({ past }) => past);
  if (first < 0) return problem;
  const after = problem.durations.map((_, job): Lag => [first, job, 0]);
  const atOnce = runs.flatMap(({ past }, job): Lag[] => (past ? [[job, first, 0]] : []));
  return { ...problem, lags: [...problem.lags, ...after, ...atOnce] };
}
