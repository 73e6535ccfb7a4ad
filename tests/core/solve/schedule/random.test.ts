import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenRules } from '../../../../src/core/solve/schedule/feasible.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';
import { leastMakespan } from './every-schedule.ts';
import { randomProblem } from './random-problem.ts';
import { runs } from './runs.ts';

describe('random problems of every kind', () => {
  it('every schedule keeps every rule, by a checker of its own', () => {
    fc.assert(
      fc.property(randomProblem({ jobs: 9, minutes: 6 }), (problem) => {
        const result = schedule(problem);
        if (!('starts' in result)) return;
        expect(brokenRules(problem, result)).toEqual([]);
        expect(result.makespan).toBe(Math.max(...result.ends) - (problem.from ?? 0));
        expect(result.lowerBound).toBeLessThanOrEqual(result.makespan);
        expect(result.optimal).toBe(result.lowerBound === result.makespan);
      }),
      { numRuns: runs(200) },
    );
  });

  it('the same problem has the same answer', () => {
    fc.assert(
      fc.property(randomProblem({ jobs: 6, minutes: 5 }), (problem) => {
        expect(schedule(structuredClone(problem))).toEqual(schedule(problem));
      }),
      { numRuns: runs(40) },
    );
  });
});

describe('small problems against trying every schedule', () => {
  it('nothing is called impossible that can be done, no bound is too high, and nearly all that can be done is found', () => {
    let [possible, found, best] = [0, 0, 0];
    fc.assert(
      fc.property(randomProblem({ jobs: 3, minutes: 4 }), (problem) => {
        const least = leastMakespan(problem, 14 + (problem.from ?? 0));
        const result = schedule(problem);
        if (least === undefined) return;
        possible++;
        expect(result).not.toHaveProperty('impossible');
        if ('lowerBound' in result) expect(result.lowerBound).toBeLessThanOrEqual(least);
        if (!('starts' in result)) return;
        found++;
        expect(result.makespan).toBeGreaterThanOrEqual(least);
        if (result.makespan === least) best++;
        if (result.optimal) expect(result.makespan).toBe(least);
      }),
      { numRuns: runs(600), seed: 20261130 },
    );
    expect(possible).toBeGreaterThan(runs(100));
    expect(found / possible).toBeGreaterThan(0.97);
    expect(best / found).toBeGreaterThan(0.97);
  });
});
