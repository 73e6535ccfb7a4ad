import { assignCrew } from '../crew.ts';
import type { Ground } from '../ground/ground.ts';

/** Times of a schedule, job by job. */
export interface Times {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
}

/**
 * How good a schedule is; less is better, the first number first: minutes past deadlines; the end, in thousandths of
 * the bound above it; changes of task; the end to the minute; the sum of all starts.
 *
 *     bound 10,000   ends 10,009 and 10,000: no difference, fewer changes win;   ends 10,010: worse than both
 */
export type Score = readonly [
  late: number,
  thousandths: number,
  changes: number,
  end: number,
  starts: number,
];

/** A schedule and how good it is. */
export interface Scored extends Times {
  readonly score: Score;
}

/** @param order  All jobs; the nearer to the order of starts, the quicker. */
export function score(ground: Ground, times: Times, order: readonly number[]): Score {
  const { deadlines, from } = ground.prepared;
  let [late, end, starts] = [0, from, 0];
  times.ends.forEach((minute, job) => {
    late += Math.max(0, minute - deadlines[job]!);
    end = Math.max(end, minute);
    starts += times.starts[job]!;
  });
  const thousandths = Math.ceil(((end - ground.bound) * 1000) / Math.max(1, ground.bound - from));
  const changes = changesOfTask(ground, times, order);
  return [late, Math.max(1, thousandths), changes, end, ground.problem.latest ? -starts : starts];
}

/** Below zero where `a` is the better, by its first `numbers`. */
export function compareScores(a: Score, b: Score, numbers = 5): number {
  for (let at = 0; at < numbers; at++) if (a[at] !== b[at]) return a[at]! - b[at]!;
  return 0;
}

/** How often somebody goes on with another kind of job than the one before. */
function changesOfTask(ground: Ground, times: Times, order: readonly number[]): number {
  const { kinds } = ground.prepared;
  let changes = 0;
  for (const row of rowsOfWork(ground, times, order)) {
    row.forEach((job, index) => index > 0 && kinds[job] !== kinds[row[index - 1]!] && changes++);
  }
  return changes;
}

/** What each of the crew does, one job after the other; all that counts in one row where there is no crew. */
function rowsOfWork(
  { problem, prepared }: Ground,
  { starts, ends }: Times,
  order: readonly number[],
): number[][] {
  const { kinds, isCrew } = prepared;
  const { crew, demands, capacities } = problem;
  const counted = order.filter((job) => isCrew[job] && kinds[job]! >= 0 && ends[job]! > starts[job]!);
  counted.sort((a, b) => starts[a]! - starts[b]! || kinds[a]! - kinds[b]! || a - b);
  if (crew === undefined) return [counted];
  const works = counted.map((job) => ({
    start: starts[job]!,
    end: ends[job]!,
    people: demands[job]![crew]!,
    task: kinds[job]!,
  }));
  const rows: number[][] = [];
  assignCrew(works, capacities[crew]!).forEach((people, index) => {
    for (const person of people) (rows[person] ??= []).push(counted[index]!);
  });
  return rows.filter((row) => row);
}
