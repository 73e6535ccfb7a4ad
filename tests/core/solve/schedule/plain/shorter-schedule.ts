import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

/**
 * Whether some schedule of a plain problem with lags from start to start ends before a minute: tries every start of
 * every job, minute by minute. Slow, and apart from the search, so that each can be held against the other.
 */
export function endsBefore(problem: ScheduleProblem, minute: number): boolean {
  const { durations, demands, capacities, from = 0, releases } = problem;
  const starts: number[] = [];
  const isFree = (job: number, at: number): boolean =>
    capacities.every((capacity, resource) => {
      const uses = starts.map((start, other) =>
        start <= at && at < start + durations[other]! ? demands[other]![resource]! : 0,
      );
      return uses.reduce((sum, use) => sum + use, demands[job]![resource]!) <= capacity;
    });
  const keepsLags = (job: number, start: number): boolean =>
    problem.lags.every(([i, j, least]) => {
      const startOf = (other: number): number | undefined => (other === job ? start : starts[other]);
      const [before, after] = [startOf(i), startOf(j)];
      return before === undefined || after === undefined || after >= before + least;
    });
  const place = (job: number): boolean => {
    if (job === durations.length) return true;
    for (let start = Math.max(from, releases?.[job] ?? from); start + durations[job]! < minute; start++) {
      const minutes = Array.from({ length: durations[job]! }, (_, at) => start + at);
      if (!keepsLags(job, start) || !minutes.every((at) => isFree(job, at))) continue;
      starts[job] = start;
      const isDone = place(job + 1);
      starts.length = job;
      if (isDone) return true;
    }
    return false;
  };
  return place(0);
}
