import fc from 'fast-check';
import type { Edge, Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

/**
 * Problems of a few jobs without calendars: lags of any sign, from any edge, also of a job with itself; jobs of no
 * length; releases and deadlines. A third or so have no schedule.
 */
export function randomLags(most: {
  readonly jobs: number;
  readonly minutes: number;
}): fc.Arbitrary<ScheduleProblem> {
  return fc.integer({ min: 0, max: most.jobs }).chain((jobs) => {
    const perJob = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T[]> =>
      fc.array(value, { minLength: jobs, maxLength: jobs });
    return fc.record({
      durations: perJob(fc.nat(most.minutes)),
      lags: fc.array(lag(jobs, most.minutes), { maxLength: jobs === 0 ? 0 : jobs + 1 }),
      demands: perJob(fc.tuple(fc.nat(2), fc.nat(2))),
      capacities: fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 2, max: 3 })),
      releases: perJob(fc.constantFrom(0, 0, 0, 1, 3)),
      deadlines: perJob(fc.constantFrom(Infinity, Infinity, Infinity, 6, 9)),
    });
  });
}

const edge = fc.constantFrom<Edge>('start', 'end');

function lag(jobs: number, minutes: number): fc.Arbitrary<Lag> {
  const job = fc.nat(Math.max(0, jobs - 1));
  const length = fc.integer({ min: -2 * minutes, max: minutes });
  return fc.tuple(job, job, length, edge, edge).map(([i, j, least, edgeOfI, edgeOfJ]): Lag => {
    const length = i === j ? Math.min(least, 0) : least;
    return edgeOfI === 'start' && edgeOfJ === 'start' ? [i, j, length] : [i, j, length, edgeOfI, edgeOfJ];
  });
}
