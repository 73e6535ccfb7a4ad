import { brokenRules } from '../../../../src/core/solve/schedule/feasible.ts';
import type { Calendar, ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';

/** The least makespan among all schedules that start no job after `latest`, by trying them all; nothing if none keeps the rules. */
export function leastMakespan(problem: ScheduleProblem, latest: number): number | undefined {
  const jobs = problem.durations.length;
  const { from = 0 } = problem;
  let best: number | undefined;
  const walk = (starts: readonly number[], ends: readonly number[]): void => {
    const part = upTo(problem, starts.length);
    if (starts.length > 0 && brokenRules(part, { starts, ends }).length > 0) return;
    const makespan = Math.max(from, ...ends) - from;
    if (best !== undefined && makespan >= best) return;
    if (starts.length === jobs) best = makespan;
    else
      for (let start = from; start <= latest; start++)
        walk([...starts, start], [...ends, endOf(problem, starts.length, start)]);
  };
  walk([], []);
  return best;
}

/** The problem of the first jobs alone: what breaks a rule there breaks it in the whole. */
function upTo(problem: ScheduleProblem, jobs: number): ScheduleProblem {
  const isIn = (job: number): boolean => job < jobs;
  return {
    ...problem,
    durations: problem.durations.slice(0, jobs),
    lags: problem.lags.filter(([i, j]) => isIn(i) && isIn(j)),
    holds: (problem.holds ?? []).filter(({ from, to }) => [...from, ...to].every(([job]) => isIn(job))),
    exclusions: (problem.exclusions ?? []).map(({ one, other }) => ({
      one: one.filter(({ job }) => isIn(job)),
      other: other.filter(({ job }) => isIn(job)),
    })),
  };
}

export function endOf(problem: ScheduleProblem, job: number, start: number): number {
  const minutes = problem.durations[job]!;
  const calendar = problem.calendars?.[problem.calendarOf?.[job] ?? -1];
  const isWhole = !problem.splits?.[job] || problem.startsOnly?.[job] || problem.endsOnly?.[job];
  if (!calendar || isWhole) return start + minutes;
  let [end, left] = [start, minutes];
  for (; left > 0 && end < start + 200; end++) if (isOpen(calendar, end)) left--;
  return end;
}

function isOpen({ open, every }: Calendar, minute: number): boolean {
  const copies =
    every === undefined ? [0] : [-1, 0, 1, 2, 3].map((k) => (Math.floor(minute / every) + k) * every);
  return copies.some((shift) => open.some(([from, to]) => from + shift <= minute && minute < to + shift));
}
