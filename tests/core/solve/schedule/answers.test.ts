import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../../src/core/in-pieces.ts';
import { branch } from '../../../../src/core/solve/schedule/exact/branch.ts';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import { scheduling } from '../../../../src/core/solve/schedule/general.ts';
import type { ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';
import { randomLags } from './exact/random-lags.ts';
import { plainProblem } from './plain/plain-problems.ts';
import { randomProblem } from './random-problem.ts';
import { runs } from './runs.ts';

/** Jobs that each need the only builder in hours that end. */
function inHours(
  durations: readonly number[],
  until: number,
  more: Partial<ScheduleProblem> = {},
): ScheduleProblem {
  const all = <T>(value: T): T[] => durations.map(() => value);
  const hours = { calendars: [{ open: [[0, until] as const] }], calendarOf: all(0) };
  return { durations, lags: [], demands: all([1]), capacities: [1], budget: 50, ...hours, ...more };
}

describe('a small problem without hours', () => {
  it('is proven however few tries there are, as by branching alone', () => {
    fc.assert(
      fc.property(randomLags({ jobs: 8, minutes: 5 }), (problem) => {
        const proof = branch(problem);
        const result = schedule({ ...problem, budget: 1 });
        if ('impossible' in proof) expect(result).toHaveProperty('impossible');
        if (!('proven' in proof && proof.proven)) return;
        const { makespan } = proof;
        expect(result).toMatchObject({ makespan, lowerBound: makespan, optimal: true });
        expect('starts' in result && feasible(problem, result)).toBe(true);
      }),
      { numRuns: runs(400) },
    );
  });

  it('whether it has greatest lags or not, and whenever it begins', () => {
    fc.assert(
      fc.property(plainProblem({ jobs: 8, minutes: 9 }), (problem) => {
        const result = schedule({ ...problem, placements: 0 });
        const proof = branch(problem);
        if (!('proven' in proof && proof.proven)) throw new Error(JSON.stringify(proof));
        expect(result).toMatchObject({ makespan: proof.makespan, optimal: true });
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('a large problem without hours', () => {
  // each of 260 jobs takes two people for 10 min: of five people one always looks on
  const pairs: ScheduleProblem = {
    durations: Array.from({ length: 260 }, () => 10),
    lags: [],
    demands: Array.from({ length: 260 }, () => [2]),
    capacities: [5],
    placements: 260,
    from: 30,
  };
  it('is not said to be best where no bound says so', () => {
    const result = schedule(pairs);
    expect(result).toMatchObject({ makespan: 1300, lowerBound: 1040, optimal: false });
  });
  it('is said to be best where a bound is reached', () => {
    expect(schedule({ ...pairs, capacities: [4] })).toMatchObject({ makespan: 1300, optimal: true });
  });
});

describe('a schedule in pieces', () => {
  it('is the one that is made at once, wherever there are hours, holds or vapour', () => {
    let pieces = 0;
    fc.assert(
      fc.property(randomProblem({ jobs: 6, minutes: 5 }), (problem) => {
        const kept = { ...problem, holds: [{ resource: 0, count: 1, from: [[0, 'start']], to: [[0, 'end']] }] } as const; // prettier-ignore
        const work = scheduling(kept);
        let step = work.next();
        for (; !step.done; step = work.next()) pieces++;
        expect(step.value).toEqual(schedule(kept));
      }),
      { numRuns: runs(100) },
    );
    expect(pieces).toBeGreaterThan(runs(100));
  });

  it('tries 20,000 where nothing is said', () => {
    const { budget, ...problem } = inHours([5, 5, 10], 100, { kinds: [0, 1, 0] });
    expect(budget).toBeLessThan(20_000);
    expect(atOnce(scheduling(problem))).toEqual(atOnce(scheduling({ ...problem, budget: 20_000 })));
  });
});

describe('where no schedule was found', () => {
  it('those that come too late are named, with a bound that holds nevertheless', () => {
    // both by minute 10, one after the other; a third at any time, so that no sum of work proves it
    const problem = inHours([10, 10, 5], 100, { deadlines: [10, 10] });
    const result = schedule(problem);
    expect(result).toMatchObject({ notFound: { because: 'deadline' }, lowerBound: 25 });
    expect('notFound' in result && result.notFound.jobs).toHaveLength(1);
    expect(schedule({ ...problem, deadlines: [10, 20] })).toMatchObject({ makespan: 25, optimal: true });
  });
});
