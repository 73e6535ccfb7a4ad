import { describe, expect, it } from 'vitest';
import { branch } from '../../../../../src/core/solve/schedule/exact/branch.ts';
import { isExact } from '../../../../../src/core/solve/schedule/exact/is-exact.ts';
import { brokenRules } from '../../../../../src/core/solve/schedule/feasible.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

/** Jobs of these lengths that all need the one bench, and whatever else is said. */
function atOneBench(durations: readonly number[], more: Partial<ScheduleProblem> = {}): ScheduleProblem {
  return { durations, demands: durations.map(() => [1]), capacities: [1], lags: [], ...more };
}

/** The same where each needs one of two people. */
function byTwo(durations: readonly number[], more: Partial<ScheduleProblem> = {}): ScheduleProblem {
  return atOneBench(durations, { capacities: [2], ...more });
}

/** `count` models: melt 5 min in one of two pots, and at once pour, then 9 min in one of three moulds. */
function pouring(count: number, pots = 2): ScheduleProblem {
  const models = Array.from({ length: count }, (_, model) => model);
  return {
    durations: models.flatMap(() => [5, 9]),
    demands: models.flatMap(() => [
      [1, 0],
      [0, 1],
    ]),
    capacities: [pots, 3],
    lags: models.flatMap(
      (model) =>
        [
          [2 * model, 2 * model + 1, 5],
          [2 * model + 1, 2 * model, -5],
        ] as const,
    ),
  };
}

describe('the shortest schedule', () => {
  it('of nothing takes no time', () => {
    expect(branch(atOneBench([]))).toEqual({ starts: [], makespan: 0, proven: true, lowerBound: 0 });
  });

  it('turns two jobs round where a greatest lag asks for it', () => {
    // Job 0 takes 4 min, and job 1 may start at most 3 after it: job 1 comes first, 0 to 3; then job 0, 3 to 7.
    const problem = atOneBench([4, 3], { lags: [[1, 0, -3]] });
    expect(branch(problem)).toEqual({ starts: [3, 0], makespan: 7, proven: true, lowerBound: 7 });
    // Job 1 not before minute 2: 2 to 5, then 5 to 9.
    expect(branch({ ...problem, releases: [0, 2] })).toMatchObject({
      starts: [5, 2],
      makespan: 9,
      proven: true,
    });
    // And job 0 ready by 8: no.
    expect(branch({ ...problem, releases: [0, 2], deadlines: [8, 99] })).toHaveProperty('impossible');
  });

  it('lets jobs of no length share what is full', () => {
    expect(branch(atOneBench([5, 0, 0], { deadlines: [5, 0, 3] }))).toMatchObject({ makespan: 5 });
  });

  it('reads lags between ends as lags between starts', () => {
    // The end of job 2 at least 6 after the end of job 1: starts 0 and 3 + 6 - 2 = 7.
    const problem = { ...atOneBench([3, 2]), lags: [[0, 1, 6, 'end', 'end']] as const };
    expect(branch(problem)).toMatchObject({ starts: [0, 7], makespan: 9 });
  });

  it('begins a batch of like models in their order, and proves it with few nodes', () => {
    // Each pour comes 5 min after the second before it (pots) and 9 after the third before it (moulds):
    // 5, 5, 10, 14, 15, 19, 23, 24, 28, 32, 33, 37; the last ends at 46.
    const problem = pouring(12);
    const result = branch(problem, { nodes: 2000 });
    if (!('starts' in result)) throw new Error(JSON.stringify(result));
    const ends = result.starts.map((start, job) => start + problem.durations[job]!);
    expect(brokenRules(problem, { starts: result.starts, ends })).toEqual([]);
    expect(result).toMatchObject({ makespan: 46, proven: true });
    const melts = result.starts.filter((_, job) => job % 2 === 0);
    expect(melts).toEqual(melts.toSorted((a, b) => a - b));
  });
});

describe('what has no schedule', () => {
  it('names the jobs that wait for each other in a circle', () => {
    const problem = atOneBench([1, 1, 1], {
      lags: [
        [0, 1, 60],
        [1, 2, 0],
        [2, 0, -45],
      ],
    });
    expect(branch(problem)).toEqual({ impossible: { because: 'lags', jobs: [0, 1, 2] } });
  });

  it('names the job that needs more than there is', () => {
    const problem = {
      durations: [1, 1],
      demands: [
        [0, 1],
        [1, 3],
      ],
      capacities: [1, 2],
      lags: [],
    };
    expect(branch(problem)).toEqual({ impossible: { because: 'capacity', jobs: [1], resource: 1 } });
  });

  it('names the jobs that cannot both have the bench', () => {
    // Job 2 starts 1 to 2 min after job 1, which has the bench for 4.
    const problem = atOneBench([9, 4, 4], {
      lags: [
        [1, 2, 1],
        [2, 1, -2],
      ],
    });
    expect(branch(problem)).toEqual({ impossible: { because: 'capacity', jobs: [1, 2], resource: 0 } });
  });

  it('names a job that cannot keep its deadline, and jobs that cannot keep theirs together', () => {
    const alone = atOneBench([4, 4], { lags: [[0, 1, 4]], deadlines: [Infinity, 7] });
    expect(branch(alone)).toEqual({ impossible: { because: 'deadline', jobs: [1] } });
    const together = atOneBench([4, 4, 4], { deadlines: [Infinity, 7, 7] });
    expect(branch(together)).toMatchObject({ impossible: { jobs: expect.arrayContaining([1, 2]) } });
  });

  it('is proven by trying, where nothing else tells, with three that cannot share two people', () => {
    // 20 min of work fit into 2 times 11, but one of the two has to do three jobs of 4 min
    const by = (deadline: number) =>
      byTwo([4, 4, 4, 4, 4], { deadlines: [4, 4, 4, 4, 4].map(() => deadline) });
    expect(branch(by(12))).toMatchObject({ makespan: 12, proven: true });
    expect(branch(by(11))).toEqual({ impossible: { because: 'capacity', jobs: [0, 1, 2], resource: 0 } });
  });

  it('is not said of a problem of which a schedule is at hand', () => {
    expect(branch(atOneBench([4, 4]), { upper: 8 })).toEqual({ open: true, lowerBound: 8 });
    expect(branch(byTwo([4, 4, 4, 4, 4]), { upper: 12 })).toEqual({ open: true, lowerBound: 12 });
  });
});

describe('the number of nodes', () => {
  it('ends the search, with what was found and a bound that holds', () => {
    const problem = pouring(8);
    const best = branch(problem);
    expect(best).toMatchObject({ proven: true });
    if (!('makespan' in best)) return;
    expect(branch(problem, { nodes: 0 })).toMatchObject({ open: true });
    const least = Array.from({ length: 60 }, (_, nodes) => branch(problem, { nodes }));
    const proven = least.findIndex((result) => 'proven' in result && result.proven);
    for (const result of least)
      expect('lowerBound' in result && result.lowerBound).toBeLessThanOrEqual(best.makespan);
    expect(proven).toBeGreaterThan(0);
    expect(least.slice(proven)).toEqual(least.slice(proven).map(() => best));
  });

  it('is no greater than what may be looked at', () => {
    // alone, a job needs one; of two, the first is put before the second and the schedule is there: its end is the bound
    expect(branch(atOneBench([4]), { nodes: 0 })).toEqual({ open: true, lowerBound: 4 });
    expect(branch(atOneBench([4]), { nodes: 1 })).toMatchObject({ makespan: 4, proven: true });
    expect(branch(atOneBench([4, 3]), { nodes: 1 })).toEqual({ open: true, lowerBound: 7 });
    expect(branch(atOneBench([4, 3]), { nodes: 2 })).toMatchObject({ makespan: 7, proven: true });
  });

  it('finds ever shorter schedules as it grows, from a bound by all the work there is', () => {
    // 5 and 5, 4 and 4 and so on: 19 min by two people take 10; the end counts from the first minute
    const problem = byTwo([5, 4, 4, 3, 3], { from: 1000 });
    const makespans = [0, 5, 8].map((nodes) => branch(problem, { nodes }));
    expect(makespans).toMatchObject([
      { open: true, lowerBound: 10 },
      { makespan: 11, proven: false, lowerBound: 10 },
      { makespan: 10, proven: true, lowerBound: 10 },
    ]);
    // several on the way: each is shorter than the one before
    const long = atOneBench([3, 4, 5, 6, 6, 7], {
      demands: [[3], [1], [2], [3], [3], [1]],
      capacities: [4],
      releases: [1, 0, 3, 6, 6, 0],
    });
    const found = Array.from({ length: 25 }, (_, nodes) => branch(long, { nodes })).flatMap((result) =>
      'makespan' in result ? [result.makespan] : [],
    );
    expect(new Set(found).size).toBeGreaterThan(2);
    expect(found).toEqual(found.toSorted((a, b) => b - a));
  });

  it('bounds the work for many jobs too', () => {
    const result = branch(pouring(60, 4));
    expect(result).toHaveProperty('starts');
  });
});

describe('which problems', () => {
  const plain = atOneBench([1, 1]);
  const hours = { calendars: [{ open: [[0, 9] as const] }] };
  it.each([
    ['jobs that share resources, with lags and deadlines', true, { ...plain, deadlines: [5, 5] }],
    ['a calendar that no job keeps', true, { ...plain, ...hours, calendarOf: [-1, -1] }],
    ['a calendar', false, { ...plain, ...hours, calendarOf: [-1, 0] }],
    [
      'a hold',
      false,
      { ...plain, holds: [{ resource: 0, count: 1, from: [[0, 'start']], to: [[1, 'end']] }] },
    ],
    [
      'an exclusion',
      false,
      { ...plain, exclusions: [{ one: [{ job: 0, after: 1 }], other: [{ job: 1, after: 0 }] }] },
    ],
    [
      'a hold and an exclusion',
      false,
      {
        ...plain,
        holds: [{ resource: 0, count: 1, from: [[0, 'start']], to: [[1, 'end']] }],
        exclusions: [{ one: [{ job: 0, after: 1 }], other: [{ job: 1, after: 0 }] }],
      },
    ],
    [
      'more jobs than the table of least times should hold',
      false,
      atOneBench(new Array<number>(251).fill(1)),
    ],
  ] as [string, boolean, ScheduleProblem][])('%s: %s', (_, answer, problem) => {
    expect(isExact(problem)).toBe(answer);
  });
});
