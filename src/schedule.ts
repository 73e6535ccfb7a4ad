import { askedList, askedObject, askedWhole } from './core/solve/asked.ts';
import type { ScheduleProblem, ScheduleResult } from './core/solve/schedule/problem.ts';
import { schedule as scheduleOf } from './core/solve/schedule/schedule.ts';

export type {
  Calendar,
  Edge,
  Exclusion,
  Hold,
  Lag,
  Member,
  Moment,
  Obstacle,
  ScheduleProblem,
  ScheduleResult,
} from './core/solve/schedule/problem.ts';

/**
 * Jobs put in time so that all is done early: with least and greatest lags between them, resources, opening hours,
 * holds and jobs that must lie apart. The same problem has the same schedule, on every machine.
 *
 * ```js
 * import { schedule } from 'benchwright/schedule';
 *
 * const result = schedule({
 *   durations: [30, 30, 45], // minutes
 *   lags: [[0, 2, 30]], // job 2 begins at least 30 minutes after job 0 does
 *   demands: [[1], [1], [2]], // what each holds of each resource
 *   capacities: [2],
 * });
 * // { starts: [0, 0, 30], ends: [30, 30, 75], makespan: 75, lowerBound: 75, optimal: true }
 * ```
 *
 * @returns The schedule with a bound below which none can be; or what proves that there is none (`impossible`); or what
 *          stood in the way when none was found (`notFound`).
 * @throws {TypeError} Where something is of the wrong kind, and {RangeError} where a number is out of range. The message
 *         says which.
 */
export function schedule(problem: ScheduleProblem): ScheduleResult {
  const { durations, lags, demands, capacities } = askedObject('the problem', problem);
  const jobs = wholes('durations', durations).length;
  const resources = wholes('capacities', capacities).length;
  askLags(lags, jobs);
  const rows = askedList('demands', demands);
  sameLength('demands', rows, jobs, 'job');
  rows.forEach((row, job) =>
    sameLength(`demands[${job}]`, wholes(`demands[${job}]`, row), resources, 'resource'),
  );
  for (const name of perJob)
    if (problem[name] !== undefined) sameLength(name, askedList(name, problem[name]), jobs, 'job');
  return scheduleOf(problem);
}

const perJob = ['calendarOf', 'splits', 'startsOnly', 'endsOnly', 'releases', 'deadlines', 'kinds'] as const;

function wholes(name: string, value: unknown): readonly unknown[] {
  const list = askedList(name, value);
  list.forEach((one, at) => askedWhole(`${name}[${at}]`, one, 0));
  return list;
}

function askLags(lags: unknown, jobs: number): void {
  askedList('lags', lags).forEach((lag, at) => {
    const [from, to, minutes] = askedList(`lags[${at}]`, lag, 3);
    for (const job of [from, to])
      if (askedWhole(`lags[${at}]`, job, 0) >= jobs)
        throw new RangeError(`lags[${at}] names job ${String(job)}, but there are only ${jobs}.`);
    askedWhole(`lags[${at}][2]`, minutes, Number.MIN_SAFE_INTEGER);
  });
}

function sameLength(name: string, list: readonly unknown[], length: number, of: string): void {
  if (list.length !== length)
    throw new RangeError(`${name} must hold ${length}, one for each ${of}, not ${list.length}.`);
}
