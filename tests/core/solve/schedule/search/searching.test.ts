import { describe, expect, it } from 'vitest';
import { feasible } from '../../../../../src/core/solve/schedule/feasible.ts';
import { scheduling } from '../../../../../src/core/solve/schedule/general.ts';
import type { ScheduleProblem, ScheduleResult } from '../../../../../src/core/solve/schedule/problem.ts';
import { models } from './models.ts';
import { searchOf } from './search-of.ts';

/** What a search comes to, and in how many pieces. */
function searched(problem: ScheduleProblem): { result: ScheduleResult; pieces: number } {
  const search = scheduling(problem);
  for (let pieces = 0; ; pieces++) {
    const { done, value } = search.next();
    if (done) return { result: value, pieces };
  }
}
/** Changes of task in the schedule found, which keeps every rule. */
function changesOf(problem: ScheduleProblem): number {
  const { result } = searched(problem);
  if (!('starts' in result)) throw new Error(JSON.stringify(result));
  expect(feasible(problem, result)).toBe(true);
  return searchOf(problem).judge.score(result)[2];
}

/** Job 0 sprays for 10 min, whose vapour clears in 30; job 1 needs a flame for 10 min. Open for so many minutes. */
const sprayAndFlame = (open: number): ScheduleProblem => ({
  durations: [10, 10],
  lags: [],
  demands: [[], []],
  capacities: [],
  calendars: [{ open: [[0, open]] }],
  calendarOf: [0, 0],
  exclusions: [{ one: [{ job: 0, after: 30 }], other: [{ job: 1, after: 0 }] }],
  budget: 100,
});

describe('where no rule leads to a schedule', () => {
  it('a line at random may', () => {
    // all rules let job 0 go first; the flame must, as there is no time for it after the spray
    expect(searched(sprayAndFlame(30)).result).toMatchObject({ starts: [10, 0] });
  });
  it('only a few of those are tried, and what stood in the way of the first rule is told', () => {
    const { result, pieces } = searched(sprayAndFlame(15));
    expect(result).toEqual({ notFound: { because: 'calendar', jobs: [1] }, lowerBound: 10 });
    expect(pieces).toBeLessThan(50);
  });
});

describe('a first schedule', () => {
  it.each([3, 25])(
    'is made whatever the budget: %i jobs, one of them moved for the sake of another',
    (jobs) => {
      // job 0 has the bench for 1000 min, which the last needs too; the last but one may begin 5 min before that at most
      const durations = Array.from({ length: jobs }, (_, job) => (job === 0 ? 1000 : 10));
      const problem: ScheduleProblem = {
        durations,
        lags: [[jobs - 1, jobs - 2, -5]],
        demands: durations.map((_, job) => [job === 0 || job === jobs - 1 ? 1 : 0]),
        capacities: [1],
      };
      const expected = durations.map((_, job) => (job < jobs - 2 ? 0 : job === jobs - 1 ? 1000 : 995));
      expect(searched({ ...problem, budget: 0 }).result).toMatchObject({ starts: expected });
      expect(searched({ ...problem, budget: 1 }).result).toMatchObject({ starts: expected });
      expect(searched({ ...problem, placements: 0 }).result).toMatchObject({ starts: expected });
    },
  );
  it('is that of the first rule, model by model, if only one may be tried', () => {
    const problem = models(12, [10, 5]);
    expect(changesOf({ ...problem, budget: 0 })).toBe(23);
    expect(changesOf({ ...problem, budget: 1 })).toBe(23);
    expect(changesOf({ ...problem, budget: 10 })).toBe(1);
  });
});

describe('schedules that may be tried', () => {
  it('are tried, and no more, as long as there may be a better one', () => {
    // pour at once: three changes are the fewest, though two steps need no more than one
    const free = models(2, [10, 5]);
    const problem: ScheduleProblem = { ...free, lags: [...free.lags, [1, 0, -10], [3, 2, -10]] };
    const pieces = (budget: number): number => searched({ ...problem, budget }).pieces;
    expect(pieces(300) - pieces(100)).toBe(200);
    expect(pieces(100)).toBeLessThan(100 + 20);
    expect(changesOf({ ...problem, budget: 300 })).toBe(3);
  });
  it('make nothing worse', () => {
    // one pad can be made only when all else is done, so that two changes are the fewest
    const durations = Array.from({ length: 40 }, () => 10);
    const problem: ScheduleProblem = {
      durations,
      lags: [],
      demands: durations.map(() => [1]),
      capacities: [1],
      crew: 0,
      kinds: durations.map((_, job) => job % 2),
      releases: durations.map((_, job) => (job === 20 ? 390 : 0)),
    };
    for (const budget of [10, 40]) expect([budget, changesOf({ ...problem, budget })]).toEqual([budget, 2]);
  });
});
