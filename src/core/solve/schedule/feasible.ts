import type { Calendar, Edge, Hold, Obstacle, ScheduleProblem } from './problem.ts';

/** A schedule to be judged. */
interface Judged {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

/**
 * Every rule of a problem that a schedule breaks; empty for a feasible one. Written minute by minute and apart from
 * the scheduler, so that each can be held against the other: slow, and for tests.
 */
export function brokenRules(problem: ScheduleProblem, schedule: Judged): Obstacle[] {
  return [timesBroken, lagsBroken, windowsBroken, capacitiesBroken, exclusionsBroken].flatMap((rule) =>
    rule(problem, schedule),
  );
}

/** Whether a schedule keeps every rule of a problem. */
export function feasible(problem: ScheduleProblem, schedule: Judged): boolean {
  return brokenRules(problem, schedule).length === 0;
}

function timesBroken(problem: ScheduleProblem, { starts, ends }: Judged): Obstacle[] {
  return jobsOf(problem)
    .filter((job) => {
      const [start, end] = [starts[job]!, ends[job]!];
      return !isWhole(start) || !startAllowed(problem, job, start) || !endFits(problem, job, start, end);
    })
    .map((job) => ({ because: 'calendar', jobs: [job] }));
}

function startAllowed(problem: ScheduleProblem, job: number, start: number): boolean {
  const calendar = calendarOf(problem, job);
  const minutes = problem.durations[job]!;
  if (!calendar) return true;
  if (problem.startsOnly?.[job]) return isOpen(calendar, start);
  if (problem.endsOnly?.[job]) return isOpen(calendar, start + minutes - 1);
  if (minutes === 0) return isOpen(calendar, start) || isOpen(calendar, start - 1);
  if (problem.splits?.[job]) return isOpen(calendar, start);
  return minutesFrom(start, minutes).every((minute) => isOpen(calendar, minute));
}

function endFits(problem: ScheduleProblem, job: number, start: number, end: number): boolean {
  const calendar = calendarOf(problem, job);
  const minutes = problem.durations[job]!;
  if (!calendar || !isSplit(problem, job)) return end === start + minutes;
  const worked = minutesFrom(start, end - start).filter((minute) => isOpen(calendar, minute));
  return worked.length === minutes && (minutes === 0 || worked.at(-1) === end - 1);
}

function isSplit({ splits, startsOnly, endsOnly }: ScheduleProblem, job: number): boolean {
  return Boolean(splits?.[job] && !startsOnly?.[job] && !endsOnly?.[job]);
}

function calendarOf({ calendars = [], calendarOf = [] }: ScheduleProblem, job: number): Calendar | undefined {
  return calendars[calendarOf[job] ?? -1];
}

function isOpen({ open, every }: Calendar, minute: number): boolean {
  return open.some(([from, to]) => {
    const later = every === undefined ? minute : from + ((((minute - from) % every) + every) % every);
    return from <= later && later < to;
  });
}

function lagsBroken(problem: ScheduleProblem, schedule: Judged): Obstacle[] {
  return problem.lags
    .filter(([i, j, least, edgeOfI = 'start', edgeOfJ = 'start']) => {
      return minuteOf(schedule, j, edgeOfJ) < minuteOf(schedule, i, edgeOfI) + least;
    })
    .map(([i, j]) => ({ because: 'lags', jobs: [i, j] }));
}

function windowsBroken(problem: ScheduleProblem, { starts, ends }: Judged): Obstacle[] {
  return jobsOf(problem)
    .filter((job) => {
      const release = Math.max(problem.from ?? 0, problem.releases?.[job] ?? -Infinity);
      return starts[job]! < release || ends[job]! > (problem.deadlines?.[job] ?? Infinity);
    })
    .map((job) => ({ because: 'deadline', jobs: [job] }));
}

function capacitiesBroken(problem: ScheduleProblem, schedule: Judged): Obstacle[] {
  return problem.capacities.flatMap((capacity, resource): Obstacle[] => {
    const uses = usesOf(problem, schedule, resource);
    const isOver = (minute: number): boolean => {
      const inUse = uses.filter(({ from, until }) => from <= minute && minute < until);
      return inUse.reduce((sum, { count }) => sum + count, 0) > capacity;
    };
    const over = uses.filter(({ from, until, count }) => count > 0 && from < until && isOver(from));
    return over.length === 0
      ? []
      : [{ because: 'capacity', jobs: over.flatMap(({ jobs }) => jobs), resource }];
  });
}

interface Use {
  readonly jobs: readonly number[];
  readonly from: number;
  readonly until: number;
  readonly count: number;
}

function usesOf(problem: ScheduleProblem, schedule: Judged, resource: number): Use[] {
  const byJobs = jobsOf(problem).map((job) => ({
    jobs: [job],
    from: schedule.starts[job]!,
    until: schedule.ends[job]!,
    count: problem.demands[job]![resource] ?? 0,
  }));
  const held = (problem.holds ?? []).filter((hold) => hold.resource === resource);
  return [...byJobs, ...held.map((hold) => useOfHold(schedule, hold))];
}

function useOfHold(schedule: Judged, { from, to, count }: Hold): Use {
  const minutes = (moments: Hold['from']): number[] =>
    moments.map(([job, edge]) => minuteOf(schedule, job, edge));
  const jobs = [...from, ...to].map(([job]) => job);
  return { jobs, from: Math.min(...minutes(from)), until: Math.max(...minutes(to)), count };
}

function exclusionsBroken(problem: ScheduleProblem, { starts, ends }: Judged): Obstacle[] {
  return (problem.exclusions ?? []).flatMap(({ one, other }) =>
    one.flatMap((a) =>
      other
        .filter((b) => a.job !== b.job)
        .filter((b) => {
          const begin = Math.max(starts[a.job]! - (a.before ?? 0), starts[b.job]! - (b.before ?? 0));
          return begin < Math.min(ends[a.job]! + a.after, ends[b.job]! + b.after);
        })
        .map((b): Obstacle => ({ because: 'exclusion', jobs: [a.job, b.job] })),
    ),
  );
}

function minuteOf({ starts, ends }: Judged, job: number, edge: Edge): number {
  return edge === 'start' ? starts[job]! : ends[job]!;
}

function jobsOf({ durations }: ScheduleProblem): number[] {
  return durations.map((_, job) => job);
}

function minutesFrom(start: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => start + index);
}

function isWhole(minute: number): boolean {
  return Number.isSafeInteger(minute);
}
