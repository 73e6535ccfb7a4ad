import fc from 'fast-check';
import type { Edge, Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

/** Jobs with lags of every kind and nothing to share; often there are circles. */
export function anyLags(most: { readonly jobs: number }): fc.Arbitrary<ScheduleProblem> {
  return fc.integer({ min: 1, max: most.jobs }).chain((jobs) => {
    const perJob = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T[]> =>
      fc.array(value, { minLength: jobs, maxLength: jobs });
    const edge = fc.constantFrom<Edge>('start', 'end');
    const lag = fc.tuple(fc.nat(jobs - 1), fc.nat(jobs - 1), fc.integer({ min: -9, max: 5 }), edge, edge);
    return fc
      .record({
        durations: perJob(fc.nat(5)),
        lags: fc.array(lag, { maxLength: 2 * jobs }),
        deadlines: perJob(fc.constantFrom(Infinity, 10, 20)),
      })
      .map((problem) => ({ ...problem, demands: problem.durations.map(() => []), capacities: [] }));
  });
}

/** From start to start what a lag asks for, where jobs are as long as they take. */
export function leastOf({ durations }: ScheduleProblem, lag: Lag): number {
  const [i, j, length, edgeOfI = 'start', edgeOfJ = 'start'] = lag;
  return length + (edgeOfI === 'end' ? durations[i]! : 0) - (edgeOfJ === 'end' ? durations[j]! : 0);
}

/**
 * `at[i][j]`: the least time from the start of i to that of j by any lags one after the other; above 0 at `at[i][i]`
 * where i would have to come after itself.
 *
 * @source Floyd and Warshall; Cormen, Leiserson, Rivest and Stein, Introduction to Algorithms (from memory).
 */
export function leastTimes(problem: ScheduleProblem, shortest = -Infinity): number[][] {
  const jobs = [...problem.durations.keys()];
  const at = jobs.map((i) => jobs.map((j) => (i === j ? 0 : -Infinity)));
  for (const lag of problem.lags) {
    const least = leastOf(problem, lag);
    if (least >= shortest) at[lag[0]]![lag[1]] = Math.max(at[lag[0]]![lag[1]]!, least);
  }
  for (const over of jobs)
    for (const i of jobs)
      for (const j of jobs) at[i]![j] = Math.max(at[i]![j]!, at[i]![over]! + at[over]![j]!);
  return at;
}
