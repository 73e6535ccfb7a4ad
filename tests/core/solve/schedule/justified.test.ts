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

  it('begins nothing before what began before it, however long each takes', () => {
    // two builders; job 1 begins first and ends last, and cannot begin before 3
    const two = { durations: [5, 20], lags: [], demands: [[1], [1]], capacities: [2], releases: [0, 3] };
    expect(atOnce(asEarly(two, { starts: [9, 5], ends: [14, 25] }, [true, false]))).toEqual([
      { starts: [3, 3], ends: [8, 23] },
      { starts: [0, 3], ends: [5, 23] },
    ]);
  });

  it('lets the shorter of two go first that began at once', () => {
    // two builders, one of them busy until 10 with job 2: 5 and 20 min beside it, not 20 and then 5
    const two = { durations: [20, 5, 10], lags: [], demands: [[1], [1], [1]], capacities: [2] };
    expect(atOnce(asEarly(two, { starts: [10, 10, 0], ends: [30, 15, 10] }, [false]))).toEqual([
      { starts: [5, 0, 0], ends: [25, 5, 10] },
    ]);
  });

  it('moves melting later again for a pouring that must follow within 45 min, where the bench is busy until 100', () => {
    const poured: ScheduleProblem = {
      durations: [20, 10, 100],
      lags: [
        [0, 1, 0, 'end', 'start'],
        [1, 0, -45, 'start', 'end'],
      ],
      demands: [[0], [1], [1]],
      capacities: [1],
    };
    expect(atOnce(asEarly(poured, { starts: [60, 110, 5], ends: [80, 120, 105] }, [false]))).toEqual([
      { starts: [35, 100, 0], ends: [55, 110, 100] },
    ]);
  });

  it('is none of a problem that has no schedule', () => {
    const circle = { ...problem, lags: [...problem.lags, [2, 0, 0]] as const };
    expect(atOnce(asEarly(circle, loose, [true]))).toEqual([]);
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
