import type { Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

const after = (i: number, j: number): Lag => [i, j, 0, 'end', 'start'];

/** So many models, one after the other: each is made in as many jobs as there are `minutes`, a kind of job for each. */
export function models(
  count: number,
  minutes: readonly number[],
  more: Partial<ScheduleProblem> = {},
): ScheduleProblem {
  const durations = Array.from({ length: count }, () => minutes).flat();
  const steps = minutes.length;
  return {
    durations,
    lags: durations.flatMap((_, job) => (job % steps > 0 ? [after(job - 1, job)] : [])),
    demands: durations.map(() => [1]),
    capacities: [1],
    crew: 0,
    kinds: durations.map((_, job) => job % steps),
    ...more,
  };
}
