import { describe, expect, it } from 'vitest';
import { groundOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import type { Hold, Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../../src/core/solve/schedule/schedule.ts';

/** Jobs that each need the only builder, or one of some. */
function work(durations: readonly number[], more: Partial<ScheduleProblem> = {}): ScheduleProblem {
  return { durations, lags: [], demands: durations.map(() => [1]), capacities: [1], budget: 300, ...more };
}
const after = (i: number, j: number, minutes = 0): Lag => [i, j, minutes, 'end', 'start'];
const all = <T>(problem: ScheduleProblem, value: T): T[] => problem.durations.map(() => value);

/** 0 to 60 and 100 to 160 of every 240 minutes. */
const hours = {
  open: [
    [0, 60],
    [100, 160],
  ],
  every: 240,
} as const;
const inHours = (problem: ScheduleProblem, more: Partial<ScheduleProblem> = {}): ScheduleProblem => {
  return { ...problem, calendars: [hours], calendarOf: all(problem, 0), ...more };
};
const hold = (from: number, to: number): Hold => {
  return { resource: 0, count: 1, from: [[from, 'start']], to: [[to, 'end']] };
};

// three pads on one stove, 10 min each; each rests 30 min, which takes no stove, then is trimmed
const resting = work([10, 10, 10, 30, 30, 30], {
  demands: [[1], [1], [1], [0], [0], [0]],
  lags: [after(0, 3), after(1, 4), after(2, 5)],
});
const split = { splits: [true, true, true] };

describe('no schedule ends earlier, and one ends then', () => {
  it.each<[what: string, end: number, problem: ScheduleProblem]>([
    [
      'than the longest way through its lags',
      35,
      work([5, 10], { lags: [after(0, 1, 20)], capacities: [9] }),
    ],
    ['than all work of the only builder, one after the other', 30, work([10, 15, 5])],
    ['than half of it with two', 15, work([10, 15, 5], { capacities: [2] })],
    [
      'than a job for two and what is left',
      15,
      work([10, 5, 5], { demands: [[2], [1], [1]], capacities: [2] }),
    ],
    ['than work that all arrives late', 20 + 15, work([5, 5, 5, 1], { releases: [20, 20, 20, 0] })],
    ['than what follows the last work', 30 + 30, resting],
    ['than work that fills two openings, and the rest of a third', 260, inHours(work([50, 50, 40], split))],
    ['than the hours of the whole bench, where all pause', 140, inHours(work([40, 40, 20], split))],
    ['than the same from a later day', 240 + 40, inHours(work([20, 20]), { releases: [170, 170] })],
    [
      'than a machine of which only the start keeps hours takes, at any hour',
      150,
      inHours(work([50, 50, 50]), { startsOnly: [true, true, true] }),
    ],
    [
      'than the only tin allows: unmoulded at 115, filled again until 125, chilled until 225, unmoulded when next open',
      245,
      inHours(
        work([10, 5, 10, 5], {
          demands: [[0], [0], [0], [0]],
          lags: [after(0, 1, 100), after(2, 3, 100)],
          holds: [hold(0, 1), hold(2, 3)],
        }),
      ),
    ],
    [
      'than tins that are taken when a job has ended, and given back when the next begins, allow',
      10 + 20 + 20 + 5,
      work([10, 5, 10, 5], {
        demands: [[0], [0], [0], [0]],
        lags: [after(0, 1, 20), after(2, 3, 20)],
        holds: [0, 2].map((i) => ({ resource: 0, count: 1, from: [[i, 'end']], to: [[i + 1, 'start']] })),
      }),
    ],
    [
      'than two tins for each of three pours allow, where there are five',
      2 * 25,
      work([10, 5, 10, 5, 10, 5], {
        demands: [[0], [0], [0], [0], [0], [0]],
        capacities: [5],
        lags: [after(0, 1, 10), after(2, 3, 10), after(4, 5, 10)],
        holds: [0, 2, 4].map((i) => ({ ...hold(i, i + 1), count: 2 })),
      }),
    ],
    [
      'than what follows a tin that is given back allows, whatever else the tins are for',
      2 * 35 + 15,
      work([10, 5, 10, 5, 15, 15], {
        demands: [[0], [0], [0], [0], [0], [0]],
        lags: [after(0, 1, 20), after(2, 3, 20), after(1, 4), after(3, 5)],
        holds: [hold(0, 1), hold(2, 3)],
      }),
    ],
    [
      'than work that arrives late and what has arrived before allow',
      30 + 20,
      work([10, 10, 10, 10], { releases: [0, 30, 30, 0] }),
    ],
    ['than nothing, where nothing is to be done', 0, work([])],
    ['than it begins', 35, work([10, 15, 5], { from: 5 })],
  ])('%s', (_, end, problem) => {
    expect(groundOf(problem)).toMatchObject({ bound: end });
    const { from = 0 } = problem;
    expect(schedule(problem)).toMatchObject({ makespan: end - from, lowerBound: end - from, optimal: true });
  });
});

describe('a bound proves that there is no schedule', () => {
  it('where a calendar ends before the work is done', () => {
    const problem = work([10, 10, 5], { calendars: [{ open: [[0, 24]] }], calendarOf: [0, 0, 0] });
    expect(groundOf(problem)).toEqual({
      impossible: { because: 'calendar', jobs: [0, 1, 2], resource: 0 },
    });
    expect(groundOf({ ...problem, calendars: [{ open: [[0, 25]] }] })).toMatchObject({ bound: 25 });
  });

  it('where the last deadline comes before the work is done', () => {
    const problem = work([10, 10, 5], { deadlines: [24, 20, 15] });
    expect(groundOf(problem)).toEqual({
      impossible: { because: 'deadline', jobs: [0, 1, 2], resource: 0 },
    });
    expect(groundOf({ ...problem, deadlines: [25, 20, 15] })).toMatchObject({ bound: 25 });
    // one job may come at any time
    expect(groundOf({ ...problem, deadlines: [24, 20] })).toMatchObject({ bound: 25 });
  });

  it('but not by hours that not all work keeps', () => {
    const two = { calendars: [{ open: [[0, 24] as const] }, { open: [[0, 40] as const] }] };
    const problem = work([10, 10, 5], { ...two, calendarOf: [0, 0, 1] });
    expect(groundOf(problem)).toMatchObject({ bound: 25 });
    expect(groundOf({ ...problem, calendarOf: [0, 0, -1] })).toMatchObject({ bound: 25 });
    expect(groundOf({ ...problem, calendarOf: [0, 0] })).toMatchObject({ bound: 25 });
  });
});
