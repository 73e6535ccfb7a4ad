import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenRules } from '../../../../src/core/solve/schedule/feasible.ts';
import type { ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';
import { atOnce } from '../../../../src/core/in-pieces.ts';
import { asEarly, asLate } from '../../../../src/core/solve/schedule/search/justified.ts';
import { randomProblem } from './random-problem.ts';
import { runs } from './runs.ts';

// saw 10, drill 5, paint 5, one after the other; dust 5 whenever the builder is free
const problem: ScheduleProblem = {
  durations: [10, 5, 5, 5],
  lags: [
    [0, 1, 0, 'end', 'start'],
    [1, 2, 0, 'end', 'start'],
  ],
  demands: [[1], [1], [1], [1]],
  capacities: [1],
};
const loose = { starts: [2, 20, 40, 30], ends: [12, 25, 45, 35] };

describe('the same order of work', () => {
  it('as early as may be', () => {
    expect(atOnce(asEarly(problem, loose, [true]))).toEqual([
      { starts: [0, 10, 20, 15], ends: [10, 15, 25, 20] },
    ]);
  });

  it('as late as may be, with nothing after the last end', () => {
    expect(atOnce(asLate(problem, loose, [true]))).toEqual([
      { starts: [20, 30, 40, 35], ends: [30, 35, 45, 40] },
    ]);
  });

  it('keeps every rule and ends no later, whatever the problem', () => {
    let moved = 0;
    fc.assert(
      fc.property(randomProblem({ jobs: 6, minutes: 5 }), (random) => {
        const result = schedule({ ...random, budget: 10 });
        if (!('starts' in result)) return;
        const latest = Math.max(...result.ends);
        for (const times of [
          ...atOnce(asEarly(random, result, [true, false])),
          ...atOnce(asLate(random, result, [true, false])),
        ]) {
          moved++;
          expect(brokenRules(random, times)).toEqual([]);
          expect(Math.max(...times.ends)).toBeLessThanOrEqual(latest);
        }
      }),
      { numRuns: runs(200) },
    );
    expect(moved).toBeGreaterThan(runs(100));
  });
});
