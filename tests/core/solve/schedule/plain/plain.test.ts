import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenRules } from '../../../../../src/core/solve/schedule/feasible.ts';
import { isPlain } from '../../../../../src/core/solve/schedule/plain/is-plain.ts';
import { plainBound } from '../../../../../src/core/solve/schedule/plain/plain-bound.ts';
import { searchPlain } from '../../../../../src/core/solve/schedule/plain/search-plain.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { plainProblem } from './plain-problems.ts';
import { endsBefore } from './shorter-schedule.ts';
import { runs } from '../runs.ts';

/** The schedule found, after a check by the rules, and how long it is. */
function solved(problem: ScheduleProblem, budget: number): { starts: readonly number[]; makespan: number } {
  const { starts } = searchPlain(problem, plainBound(problem), budget);
  const ends = starts.map((start, job) => start + problem.durations[job]!);
  expect(brokenRules(problem, { starts, ends })).toEqual([]);
  const from = problem.from ?? 0;
  return { starts, makespan: Math.max(from, ...ends) - from };
}

describe('a plain problem', () => {
  const plain: ScheduleProblem = {
    durations: [3, 2],
    lags: [[0, 1, 3]],
    demands: [[1], [1]],
    capacities: [1],
  };
  const open = [{ open: [[0, 9]] as const }];
  it.each<[string, Partial<ScheduleProblem>, boolean]>([
    ['has jobs, least lags and resources', {}, true],
    ['may have releases and a first minute', { releases: [0, 9], from: -20 }, true],
    ['may name calendars that no job keeps', { calendars: open, calendarOf: [-1, -1] }, true],
    ['has no hours', { calendars: open, calendarOf: [-1, 0] }, false],
    ['has no deadline', { deadlines: [Infinity, 9] }, false],
    ['may say that every deadline is far', { deadlines: [Infinity, Infinity] }, true],
    ['has no holds', { holds: [{ resource: 0, count: 1, from: [[0, 'start']], to: [[1, 'end']] }] }, false],
    ['has no exclusions', { exclusions: [{ one: [], other: [] }] }, false],
    ['keeps no kinds together', { kinds: [-1, 0] }, false],
    ['may say that none of its jobs has a kind', { kinds: [-1, -1] }, true],
    ['has no greatest lag', { lags: [[1, 0, -5]] }, false],
    ['has no jobs that wait for each other', { lags: [[0, 1, 0], [1, 0, 0]] }, false], // prettier-ignore
    ['may count lags from an end', { lags: [[0, 1, 0, 'end', 'start']] }, true],
    ['may count lags to an end', { lags: [[0, 1, 2, 'start', 'end']] }, true],
    ['does not start before what it waits for', { lags: [[0, 1, 1, 'start', 'end']] }, false],
  ])('%s', (_, more, expected) => {
    expect(isPlain({ ...plain, ...more })).toBe(expected);
  });
});

describe('small plain problems', () => {
  it('by hand: two long jobs side by side, then the short one', () => {
    // Two benches; 4 + 4 side by side from 0, 3 after one of them: 7. The short one first: 3 + 4 = 7 too.
    const problem = { durations: [3, 4, 4], lags: [], demands: [[1], [1], [1]], capacities: [2] };
    expect(plainBound(problem)).toBe(6); // 11 bench-minutes on 2 benches
    expect(solved(problem, 10).makespan).toBe(7);
  });

  it('by hand: lags that count from ends, and a job that may begin before the other has ended', () => {
    // 1 begins 2 min after the end of 0 (4): 6; 2 ends no sooner than 5 min after the start of 1 (6): starts at 8.
    const problem: ScheduleProblem = {
      durations: [4, 1, 3],
      lags: [[0, 1, 2, 'end', 'start'], [1, 2, 5, 'start', 'end']], // prettier-ignore
      demands: [[], [], []],
      capacities: [],
    };
    expect(solved(problem, 1).starts).toEqual([0, 6, 8]);
    expect(plainBound(problem)).toBe(11);
  });

  it('by hand: the longest way to the end first, though it comes last in the list', () => {
    // 1 and then 2 take 6; 0 goes beside 2. In the order of the list it would be 3 + 1 + 5
    const problem: ScheduleProblem = {
      durations: [3, 1, 5],
      lags: [[1, 2, 0, 'end', 'start']],
      demands: [[1], [1], [0]],
      capacities: [1],
    };
    expect(solved(problem, 1)).toEqual({ starts: [1, 0, 1], makespan: 6 });
  });

  it('by hand: the first schedule is not the best', () => {
    // three places. The long ones first: both at 0, then 2 min for two places, then 1 min for two: 6. But one long and
    // the 2 min at 0, then the other long with 1 min for one place and 1 min for two: 13 place-minutes in 5
    const problem = {
      durations: [2, 1, 3, 1, 3],
      lags: [],
      demands: [[2], [2], [1], [1], [1]],
      capacities: [3],
    };
    expect(plainBound(problem)).toBe(5);
    expect(solved(problem, 1).makespan).toBe(6);
    expect(solved(problem, 60).makespan).toBe(5);
  });

  it('no jobs make a schedule of no length', () => {
    const problem = { durations: [], lags: [], demands: [], capacities: [2] };
    expect(isPlain(problem)).toBe(true);
    expect(solved(problem, 20)).toEqual({ starts: [], makespan: 0 });
    expect(plainBound(problem)).toBe(0);
  });

  it('a job of no length needs no room', () => {
    const problem = {
      durations: [0, 5, 0],
      lags: [[1, 2, 5]] as const,
      demands: [[9], [1], [9]],
      capacities: [1],
    };
    expect(solved(problem, 1)).toEqual({ starts: [0, 0, 5], makespan: 5 });
  });

  it('a resource that nobody needs may be absent altogether', () => {
    const problem = { durations: [2, 2], lags: [], demands: [[0, 1], [0, 1]], capacities: [0, 1] }; // prettier-ignore
    expect(solved(problem, 5).makespan).toBe(4);
  });

  it('one schedule is made even where none is allowed, and refuses a job that asks for more than there is', () => {
    const problem = { durations: [2, 2], lags: [], demands: [[1], [1]], capacities: [1] };
    expect(solved(problem, 0).makespan).toBe(4);
    expect(() => searchPlain({ ...problem, demands: [[1], [2]] }, 0, 5)).toThrow('with a schedule');
    expect(() => plainBound({ ...problem, lags: [[0, 1, 0], [1, 0, 0]] })).toThrow('with a schedule'); // prettier-ignore
  });
});

describe('random plain problems', () => {
  it('no schedule of all that there are ends earlier, and none ends before the bound', () => {
    fc.assert(
      fc.property(plainProblem({ jobs: 5, minutes: 3 }), (problem) => {
        expect(isPlain(problem)).toBe(true);
        const { makespan } = solved(problem, 60);
        expect(plainBound(problem)).toBeLessThanOrEqual(makespan);
        expect(endsBefore(problem, (problem.from ?? 0) + makespan)).toBe(false);
      }),
      { numRuns: runs(500) },
    );
  });

  it('larger ones keep every rule, with one schedule or with many; more are never worse', () => {
    fc.assert(
      fc.property(plainProblem({ jobs: 25, minutes: 40 }), (problem) => {
        const few = solved(problem, 1);
        const many = solved(problem, 200);
        expect(many.makespan).toBeLessThanOrEqual(few.makespan);
        expect(many.makespan).toBeGreaterThanOrEqual(plainBound(problem));
        expect(solved(structuredClone(problem), 200)).toEqual(many);
      }),
      { numRuns: runs(60) },
    );
  });

  it('the numbers of the jobs do not matter to the bound', () => {
    fc.assert(
      fc.property(plainProblem({ jobs: 8, minutes: 9 }), (problem) => {
        const last = problem.durations.length - 1;
        const renumbered = {
          ...problem,
          durations: problem.durations.toReversed(),
          demands: problem.demands.toReversed(),
          releases: problem.releases!.toReversed(),
          lags: problem.lags.map(([i, j, least]) => [last - i, last - j, least] as const),
        };
        const path = (one: ScheduleProblem): number =>
          plainBound({ ...one, demands: one.demands.map(() => []) });
        expect(path(renumbered)).toBe(path(problem));
      }),
      { numRuns: runs(100) },
    );
  });
});
