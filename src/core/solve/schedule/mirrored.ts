import type {
  Calendar,
  Edge,
  Exclusion,
  Hold,
  Lag,
  Member,
  Moment,
  ScheduleProblem,
  ScheduleResult,
} from './problem.ts';

/** When each job of a schedule runs. */
export interface Times {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

/**
 * The same problem with time running backwards: what begins at minute `t` of one ends at `at - t` of the other. What
 * is planned as early as possible in the mirror is as late as possible here.
 *
 *     |=melt=|=pour=|..chill..|=unmould=|          at 0:  |=unmould=|..chill..|=pour=|=melt=|
 *     0                                 T                 -T                                0
 *
 * A schedule keeps the rules of one exactly if its mirror image keeps those of the other, and the mirror image of a
 * mirror image means the same as the first. The mirror begins at the latest deadline: where a job has none it begins
 * nowhere (`-Infinity`), and cannot be scheduled.
 */
export function mirrored(problem: ScheduleProblem, at = 0): ScheduleProblem {
  const { durations, calendars = [], startsOnly = [], endsOnly = [], holds = [], exclusions = [] } = problem;
  const { from = 0, releases = [], deadlines = [] } = problem;
  const latest = durations.map((_, job) => deadlines[job] ?? Infinity);
  return {
    ...problem,
    lags: problem.lags.map(mirroredLag),
    calendars: calendars.map((calendar) => mirroredCalendar(calendar, at)),
    startsOnly: endsOnly,
    endsOnly: startsOnly,
    from: at - latest.reduce((most, minute) => Math.max(most, minute), from),
    releases: latest.map((minute) => at - minute),
    deadlines: durations.map((_, job) => at - Math.max(from, releases[job] ?? from)),
    holds: holds.map(mirroredHold),
    exclusions: exclusions.map(mirroredExclusion),
    reversed: !problem.reversed,
  };
}

/**
 * A result of the mirrored problem as one of the problem itself. Its makespan and lower bound then run from the first
 * start to the latest deadline.
 */
export function mirroredResult(result: ScheduleResult, at = 0): ScheduleResult {
  return 'starts' in result ? { ...result, ...mirroredTimes(result, at) } : result;
}

/** When the jobs of a schedule run in the mirror. */
export function mirroredTimes({ starts, ends }: Times, at = 0): Times {
  return { starts: ends.map((end) => at - end), ends: starts.map((start) => at - start) };
}

function mirroredLag([i, j, least, edgeOfI = 'start', edgeOfJ = 'start']: Lag): Lag {
  return [j, i, least, otherEdge(edgeOfJ), otherEdge(edgeOfI)];
}

function otherEdge(edge: Edge): Edge {
  return edge === 'start' ? 'end' : 'start';
}

function mirroredCalendar({ open, ...repeats }: Calendar, at: number): Calendar {
  return { ...repeats, open: open.map(([from, to]) => [at - to, at - from] as const).reverse() };
}

function mirroredHold({ from, to, ...held }: Hold): Hold {
  const mirroredMoment = ([job, edge]: Moment): Moment => [job, otherEdge(edge)];
  return { ...held, from: to.map(mirroredMoment), to: from.map(mirroredMoment) };
}

function mirroredExclusion({ one, other }: Exclusion): Exclusion {
  const mirroredMember = ({ job, after, before = 0 }: Member): Member => ({
    job,
    after: before,
    before: after,
  });
  return { one: one.map(mirroredMember), other: other.map(mirroredMember) };
}
