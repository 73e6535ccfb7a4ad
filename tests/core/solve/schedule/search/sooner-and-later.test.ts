import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../../../src/core/in-pieces.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { later, sooner } from '../../../../../src/core/solve/schedule/search/sooner-and-later.ts';
import { scored, searchOf } from './search-of.ts';

const hands = { capacities: [1], crew: 0 };
const earlier = (problem: ScheduleProblem, starts: readonly number[]): readonly number[] => {
  const search = searchOf(problem);
  return atOnce(sooner(search, scored(search, starts))).starts;
};
const asLateAsMayBe = (problem: ScheduleProblem, starts: readonly number[]): readonly number[] => {
  const search = searchOf({ ...problem, latest: true });
  return atOnce(later(search, scored(search, starts))).starts;
};

/** One builder saws (10 min), drills and paints (5 min each), one after the other, and dusts (5 min) in between. */
const saw: ScheduleProblem = {
  ...hands,
  durations: [10, 5, 5, 5],
  lags: [
    [0, 1, 0, 'end', 'start'],
    [1, 2, 0, 'end', 'start'],
  ],
  demands: [[1], [1], [1], [1]],
  kinds: [0, 1, 2, 3],
};

describe('a schedule with time to spare', () => {
  it('is drawn together towards its beginning', () => {
    expect(earlier(saw, [2, 20, 40, 30])).toEqual([0, 10, 20, 15]);
  });
  it('or towards its end', () => {
    expect(asLateAsMayBe(saw, [2, 20, 40, 30])).toEqual([20, 30, 40, 35]);
  });

  // Two jobs of one task (0 and 1), one of another (2), and a machine (3) that runs until 40 anyway.
  const gap: ScheduleProblem = {
    ...hands,
    durations: [10, 10, 10, 10],
    lags: [],
    demands: [[1], [1], [1], [0]],
    kinds: [0, 0, 1, -1],
  };
  it('lets a job go where a gap is free before others', () => {
    expect(earlier({ ...gap, releases: [10, 20, 0, 30] }, [10, 20, 30, 30])).toEqual([10, 20, 0, 30]);
  });
  it('but not if somebody then changed task more often; all others are drawn together still', () => {
    expect(earlier({ ...gap, releases: [0, 20, 0, 30] }, [5, 20, 30, 30])).toEqual([0, 20, 30, 30]);
  });
  it('or stays as it is, if all that can be had is more changes of task', () => {
    expect(earlier({ ...gap, releases: [0, 20, 0, 30] }, [0, 20, 30, 30])).toEqual([0, 20, 30, 30]);
  });
});
