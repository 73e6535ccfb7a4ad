import fc from 'fast-check';
import type { Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

/** Random plain problems in which every job finds room; lags go from start to start, by a hidden order of the jobs. */
export function plainProblem(most: {
  readonly jobs: number;
  readonly minutes: number;
}): fc.Arbitrary<ScheduleProblem> {
  return fc.integer({ min: 1, max: most.jobs }).chain((jobs) => {
    const perJob = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T[]> =>
      fc.array(value, { minLength: jobs, maxLength: jobs });
    return fc
      .record({
        durations: perJob(fc.nat(most.minutes)),
        demands: perJob(fc.tuple(fc.nat(2), fc.nat(1), fc.constant(0))),
        capacities: fc.tuple(fc.integer({ min: 2, max: 3 }), fc.constant(1), fc.constant(0)),
        order: fc.shuffledSubarray(
          Array.from({ length: jobs }, (_, job) => job),
          { minLength: jobs },
        ),
        pairs: fc.array(fc.tuple(fc.nat(), fc.nat(), fc.nat(most.minutes + 1)), { maxLength: jobs }),
        from: fc.constantFrom(0, 0, -7, 3),
        releases: perJob(fc.constantFrom(-9, 0, 0, 2, 4)),
      })
      .map(({ order, pairs, ...problem }) => ({
        ...problem,
        lags: pairs.flatMap((pair) => lag(order, pair)),
      }));
  });
}

function lag(order: readonly number[], [one, other, least]: readonly [number, number, number]): Lag[] {
  const [before, after] = [one % order.length, other % order.length].sort((a, b) => a - b) as [
    number,
    number,
  ];
  return before === after ? [] : [[order[before]!, order[after]!, least]];
}
