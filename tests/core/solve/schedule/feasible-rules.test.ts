import { describe, expect, it } from 'vitest';
import { brokenRules, feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import type { Lag, ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';

/** Jobs of 10 min, with nothing to share unless said. */
function tens(jobs: number, more: Partial<ScheduleProblem> = {}): ScheduleProblem {
  const all = Array.from({ length: jobs }, () => 10);
  return { durations: all, lags: [], demands: all.map(() => []), capacities: [], ...more };
}
/** What is broken when jobs run as long as they take from these starts on, or until these ends. */
function broken(problem: ScheduleProblem, starts: readonly number[], ends?: readonly number[]) {
  return brokenRules(problem, {
    starts,
    ends: ends ?? starts.map((start, job) => start + problem.durations[job]!),
  });
}
const calendar = (job = 0) => [{ because: 'calendar', jobs: [job] }];

// open 20 to 60 and 80 to 100 of every 100 minutes
const hours = { calendars: [{ open: [[20, 60] as const, [80, 100] as const], every: 100 }], calendarOf: [0] }; // prettier-ignore

describe('hours', () => {
  it.each<[what: string, more: Partial<ScheduleProblem>, start: number, end: number, isKept: boolean]>([
    ['a job from opening time on', {}, 20, 30, true],
    ['a job from a minute earlier', {}, 19, 29, false],
    ['a job up to closing time', {}, 50, 60, true],
    ['a job a minute beyond', {}, 51, 61, false],
    ['the same in a later period', {}, 350, 360, true],
    ['the same in a period before the first', {}, -50, -40, true],
    ['a closed minute before the first period', {}, -35, -25, false],
    ['a job at a closed minute', {}, 0, 10, false],
    ['a machine that starts in the last minute', { startsOnly: [true] }, 59, 69, true],
    ['a machine that starts at closing time', { startsOnly: [true] }, 60, 70, false],
    ['such a machine does not pause', { startsOnly: [true], splits: [true] }, 55, 85, false],
    ['a machine that ends with its last minute in hours', { endsOnly: [true] }, 11, 21, true],
    ['a machine that ends at opening time', { endsOnly: [true] }, 10, 20, false],
    ['a machine that ends at closing time', { endsOnly: [true] }, 50, 60, true],
    ['a machine that ends a minute later', { endsOnly: [true] }, 51, 61, false],
    ['such a machine does not pause', { endsOnly: [true], splits: [true] }, 55, 85, false],
    ['a job that goes on after the break', { splits: [true] }, 55, 85, true],
    ['the same with a minute too few', { splits: [true] }, 55, 84, false],
    ['the same with a minute too many', { splits: [true] }, 55, 86, false],
    ['one that ends at closing time', { splits: [true] }, 50, 60, true],
    ['and not at the next opening, when nobody has worked since', { splits: [true] }, 50, 80, false],
    ['one that would start in the break', { splits: [true] }, 70, 90, false],
    ['nothing at all at closing time', { durations: [0] }, 60, 60, true],
    ['nothing at all at opening time', { durations: [0] }, 80, 80, true],
    ['nothing at all in the break', { durations: [0] }, 61, 61, false],
    ['nothing at all, that may pause', { durations: [0], splits: [true] }, 60, 60, true],
  ])('%s', (_, more, start, end, isKept) => {
    const problem = tens(1, { ...hours, from: -100, ...more });
    expect(broken(problem, [start], [end])).toEqual(isKept ? [] : calendar());
  });

  it('end where they do not repeat', () => {
    const once = tens(1, { calendars: [{ open: [[20, 60]] }], calendarOf: [0] });
    expect(broken(once, [20])).toEqual([]);
    expect(broken(once, [120])).toEqual(calendar());
  });

  it('bind only the jobs that keep them', () => {
    expect(broken(tens(3, { ...hours, calendarOf: [0, -1] }), [0, 0, 0])).toEqual(calendar(0));
    expect(broken(tens(1, { calendarOf: [-1], splits: [true] }), [3])).toEqual([]);
    expect(broken(tens(1, { splits: [true] }), [3], [14])).toEqual(calendar());
  });
});

describe('windows', () => {
  const late = [{ because: 'deadline', jobs: [0] }];
  it.each<[what: string, more: Partial<ScheduleProblem>, start: number, isKept: boolean]>([
    ['nothing comes before minute 0', {}, -1, false],
    ['or before the first that is named', { from: -7 }, -7, true],
    ['whatever its release', { from: 3, releases: [0] }, 2, false],
    ['not before its release', { from: 3, releases: [5] }, 4, false],
    ['at its release', { from: 3, releases: [5] }, 5, true],
    ['up to its deadline', { deadlines: [30] }, 20, true],
    ['not beyond', { deadlines: [30] }, 21, false],
  ])('%s', (_, more, start, isKept) => {
    expect(broken(tens(1, more), [start])).toEqual(isKept ? [] : late);
  });
});

describe('lags', () => {
  it.each<[lag: Lag, second: number]>([
    [[0, 1, 4], 4],
    [[0, 1, 4, 'start', 'start'], 4],
    [[0, 1, 4, 'end', 'start'], 14],
    [[0, 1, 15, 'start', 'end'], 5],
    [[0, 1, 4, 'end', 'end'], 4],
  ])('%j lets the second start from minute %i on', (lag, second) => {
    expect(broken(tens(2, { lags: [lag] }), [0, second])).toEqual([]);
    expect(broken(tens(2, { lags: [lag] }), [0, second - 1])).toEqual([{ because: 'lags', jobs: [0, 1] }]);
  });
});

describe('what there is', () => {
  const two = tens(3, { demands: [[1], [1], [1]], capacities: [2] });
  it('is enough for as many as there are, one after the other too', () => {
    expect(broken(two, [0, 5, 10])).toEqual([]);
  });
  it('is too little for one more; those that find no room when they come are named', () => {
    expect(broken(two, [0, 5, 9])).toEqual([{ because: 'capacity', jobs: [2], resource: 0 }]);
    expect(broken(two, [5, 5, 5])).toEqual([{ because: 'capacity', jobs: [0, 1, 2], resource: 0 }]);
  });
  it('makes a schedule feasible or not', () => {
    expect(feasible(two, { starts: [0, 5, 10], ends: [10, 15, 20] })).toBe(true);
    expect(feasible(two, { starts: [0, 5, 9], ends: [10, 15, 19] })).toBe(false);
  });
  it('may be too little of one thing and enough of another', () => {
    const problem = tens(2, { demands: [[1, 1], [1, 1]], capacities: [2, 1] }); // prettier-ignore
    expect(broken(problem, [0, 5])).toEqual([{ because: 'capacity', jobs: [1], resource: 1 }]);
  });
  it('is not used by a job that asks for nothing, or takes no time', () => {
    expect(broken({ ...two, demands: [[2], [0], []] }, [0, 5, 5])).toEqual([]);
    expect(broken({ ...two, demands: [[2], [2], [0]], durations: [10, 0, 10] }, [0, 5, 5])).toEqual([]);
  });
  it('is held from the earliest moment of some jobs to the latest of others', () => {
    const problem = tens(4, {
      demands: [[0], [0], [0], [1]],
      capacities: [1],
      holds: [{ resource: 0, count: 1, from: [[0, 'end'], [1, 'start']], to: [[1, 'end'], [2, 'start']] }], // prettier-ignore
    });
    // held from 30 (job 1 begins; job 0 ends at 40) to 70 (job 2 begins; job 1 ends at 40)
    expect(broken(problem, [30, 30, 70, 20])).toEqual([]);
    expect(broken(problem, [30, 30, 70, 70])).toEqual([]);
    expect(broken(problem, [30, 30, 70, 69])).toEqual([{ because: 'capacity', jobs: [3], resource: 0 }]);
    expect(broken(problem, [30, 30, 70, 21])).toEqual([
      { because: 'capacity', jobs: [0, 1, 1, 2], resource: 0 },
    ]);
    // nothing is held where the end comes before the beginning
    expect(broken(problem, [90, 95, 70, 95])).not.toEqual([]);
    expect(broken({ ...problem, holds: [{ resource: 0, count: 1, from: [[0, 'end']], to: [[1, 'start']] }] }, [30, 20, 0, 30])).toEqual([]); // prettier-ignore
  });
  it('is held of one thing, not of another', () => {
    const hold = { resource: 1, count: 1, from: [[0, 'start']], to: [[0, 'end']] } as const;
    const problem = tens(2, { demands: [[0, 0], [1, 0]], capacities: [1, 1], holds: [hold] }); // prettier-ignore
    expect(broken(problem, [0, 0])).toEqual([]);
    expect(broken({ ...problem, holds: [{ ...hold, resource: 0 }] }, [0, 0])).toMatchObject([
      { resource: 0 },
    ]);
  });
});

describe('vapour and flame', () => {
  const problem = tens(2, {
    exclusions: [{ one: [{ job: 0, before: 3, after: 5 }], other: [{ job: 1, before: 2, after: 4 }] }],
  });
  it('keep as far apart as both ask for', () => {
    // vapour is about from 97 to 115; flame from 2 min before it starts to 4 after it has ended
    expect(broken(problem, [100, 117])).toEqual([]);
    expect(broken(problem, [100, 116])).toEqual([{ because: 'exclusion', jobs: [0, 1] }]);
    expect(broken(problem, [100, 83])).toEqual([]);
    expect(broken(problem, [100, 84])).toEqual([{ because: 'exclusion', jobs: [0, 1] }]);
  });
  it('may be one job', () => {
    const one = [{ job: 0, after: 5 }];
    expect(broken(tens(1, { exclusions: [{ one, other: one }] }), [0])).toEqual([]);
  });
  it('of several jobs are told apart', () => {
    const vapours = [{ job: 0, after: 0 }, { job: 1, after: 0 }]; // prettier-ignore
    const three = tens(3, { exclusions: [{ one: vapours, other: [{ job: 2, after: 0 }] }] });
    expect(broken(three, [0, 0, 10])).toEqual([]);
    expect(broken(three, [0, 20, 25])).toEqual([{ because: 'exclusion', jobs: [1, 2] }]);
  });
});
