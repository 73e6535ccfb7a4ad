import { askedList, askedObject, askedOneOf, askedWhole, askedYesNo } from './core/solve/asked.ts';
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
  const { durations, lags, demands, capacities, ...rest } = askedObject('the problem', problem);
  const jobs = wholes('durations', durations, 0).length;
  const resources = wholes('capacities', capacities, 0).length;
  askedList('lags', lags).forEach((lag, at) => askLag(`lags[${at}]`, lag, jobs));
  eachJob('demands', demands, jobs, (name, row) =>
    sameLength(name, wholes(name, row, 0), resources, 'resource'),
  );
  for (const [name, ask] of Object.entries(settings))
    if (rest[name] !== undefined) ask(rest[name], { jobs, resources, rest });
  return scheduleOf(problem);
}

interface Around {
  readonly jobs: number;
  readonly resources: number;
  readonly rest: Readonly<Record<string, unknown>>;
}
type Ask = (value: unknown, around: Around) => void;

const least = Number.MIN_SAFE_INTEGER;

/** What may be left out, and how each is looked at. */
const settings: Readonly<Record<string, Ask>> = {
  calendars: (value) =>
    askedList('calendars', value).forEach((one, at) => askCalendar(`calendars[${at}]`, one)),
  calendarOf: (value, { jobs, rest }) =>
    eachJob('calendarOf', value, jobs, (name, one) =>
      askedWhole(name, one, -1, askedList('calendars', rest['calendars'] ?? []).length - 1),
    ),
  splits: (value, { jobs }) => eachJob('splits', value, jobs, askedYesNo),
  startsOnly: (value, { jobs }) => eachJob('startsOnly', value, jobs, askedYesNo),
  endsOnly: (value, { jobs }) => eachJob('endsOnly', value, jobs, askedYesNo),
  releases: (value, { jobs }) =>
    eachJob('releases', value, jobs, (name, one) => askedWhole(name, one, least)),
  deadlines: (value, { jobs }) =>
    eachJob('deadlines', value, jobs, (name, one) => one === Infinity || askedWhole(name, one, least)),
  kinds: (value, { jobs }) => eachJob('kinds', value, jobs, (name, one) => askedWhole(name, one, least)),
  from: (value) => askedWhole('from', value, least),
  holds: (value, around) =>
    askedList('holds', value).forEach((one, at) => askHold(`holds[${at}]`, one, around)),
  exclusions: (value, { jobs }) =>
    askedList('exclusions', value).forEach((one, at) => askExclusion(`exclusions[${at}]`, one, jobs)),
  crew: (value, { resources }) => askedWhole('crew', value, 0, resources - 1),
  latest: (value) => askedYesNo('latest', value),
  budget: (value) => askedWhole('budget', value, 1),
  placements: (value) => askedWhole('placements', value, 1),
};

function wholes(name: string, value: unknown, from: number): readonly unknown[] {
  const list = askedList(name, value);
  list.forEach((one, at) => askedWhole(`${name}[${at}]`, one, from));
  return list;
}

function eachJob(
  name: string,
  value: unknown,
  jobs: number,
  ask: (name: string, one: unknown) => unknown,
): void {
  const list = askedList(name, value);
  sameLength(name, list, jobs, 'job');
  list.forEach((one, at) => ask(`${name}[${at}]`, one));
}

function askLag(name: string, value: unknown, jobs: number): void {
  const lag = askedList(name, value, 3);
  askedWhole(`${name}[0]`, lag[0], 0, jobs - 1);
  askedWhole(`${name}[1]`, lag[1], 0, jobs - 1);
  askedWhole(`${name}[2]`, lag[2], least);
  if (lag.length === 3) return;
  if (lag.length !== 5) throw new RangeError(`${name} must hold 3, or 5 with its edges, not ${lag.length}.`);
  for (const at of [3, 4]) askedOneOf(`${name}[${at}]`, lag[at], ['start', 'end']);
}

/** Stretches in order, apart from each other, and all of them within one period. */
function askCalendar(name: string, value: unknown): void {
  const { open, every } = askedObject(name, value);
  const stretches = askedList(`${name}.open`, open).map((one, at) => {
    const [from, to] = wholes(`${name}.open[${at}]`, one, least) as readonly number[];
    if (from === undefined || to === undefined || from >= to)
      throw new RangeError(`${name}.open[${at}] must be [from, to) with from before to.`);
    return { from, to };
  });
  stretches.forEach(({ from }, at) => {
    if (at > 0 && from < stretches[at - 1]!.to)
      throw new RangeError(`${name}.open[${at}] must begin where ${name}.open[${at - 1}] has ended.`);
  });
  if (every === undefined) return;
  const long = stretches.length === 0 ? 1 : stretches.at(-1)!.to - stretches[0]!.from;
  askedWhole(`${name}.every`, every, Math.max(1, long));
}

function askHold(name: string, value: unknown, { jobs, resources }: Around): void {
  const { resource, count, from, to } = askedObject(name, value);
  askedWhole(`${name}.resource`, resource, 0, resources - 1);
  askedWhole(`${name}.count`, count, 0);
  for (const [side, moments] of Object.entries({ from, to })) {
    askedList(`${name}.${side}`, moments).forEach((moment, at) => {
      const [job, edge] = askedList(`${name}.${side}[${at}]`, moment, 2);
      askedWhole(`${name}.${side}[${at}][0]`, job, 0, jobs - 1);
      askedOneOf(`${name}.${side}[${at}][1]`, edge, ['start', 'end']);
    });
  }
}

function askExclusion(name: string, value: unknown, jobs: number): void {
  const { one, other } = askedObject(name, value);
  for (const [side, members] of Object.entries({ one, other })) {
    askedList(`${name}.${side}`, members).forEach((member, at) => {
      const { job, after, before } = askedObject(`${name}.${side}[${at}]`, member);
      askedWhole(`${name}.${side}[${at}].job`, job, 0, jobs - 1);
      askedWhole(`${name}.${side}[${at}].after`, after, 0);
      if (before !== undefined) askedWhole(`${name}.${side}[${at}].before`, before, 0);
    });
  }
}

function sameLength(name: string, list: readonly unknown[], length: number, of: string): void {
  if (list.length !== length)
    throw new RangeError(`${name} must hold ${length}, one for each ${of}, not ${list.length}.`);
}
