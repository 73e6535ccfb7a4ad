import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../../../../src/core/in-pieces.ts';
import { brokenRules } from '../../../../../src/core/solve/schedule/feasible.ts';
import { scheduling } from '../../../../../src/core/solve/schedule/general.ts';
import type { Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { judged, type Left } from '../../../../../src/core/solve/schedule/search/budget.ts';
import { rework } from '../../../../../src/core/solve/schedule/search/rework.ts';
import { compareScores } from '../../../../../src/core/solve/schedule/search/score.ts';
import { randomProblem } from '../random-problem.ts';
import { runs } from '../runs.ts';
import { models } from './models.ts';
import { scored, searchOf } from './search-of.ts';

/** What becomes of a schedule that makes each model from first to last, with what is left; and what that has cost. */
function reworked(problem: ScheduleProblem, left: Left) {
  const search = searchOf(problem);
  let minute = 0;
  const given = scored(
    search,
    problem.durations.map((minutes) => (minute += minutes) - minutes),
  );
  const before = { ...left };
  const { score, ...times } = atOnce(rework(search, given, left));
  expect(brokenRules(problem, times)).toEqual([]);
  const [late, , changes, end] = score;
  expect([late, end]).toEqual([0, given.score[3]]);
  return {
    from: given.score[2],
    changes,
    schedules: before.schedules - left.schedules,
    placements: before.placements - left.placements,
  };
}

describe('the work of one builder, stretch by stretch', () => {
  it.each([
    { count: 12, minutes: [10, 5], from: 23, stretches: 150 },
    { count: 20, minutes: [10, 5, 2], from: 59, stretches: 220 },
    { count: 20, minutes: [5, 4, 3, 2], from: 79, stretches: 1200 },
  ])('comes to one step after the other: $count models of $minutes min', ({ stretches, from, ...of }) => {
    const problem = models(of.count, of.minutes);
    const left = { schedules: stretches, placements: Infinity };
    expect(reworked(problem, left)).toMatchObject({ from, changes: of.minutes.length - 1 });
  });

  it('leaves together what must follow at once', () => {
    // melt and pour by turns 8 times, then cover all: 8 + 7 changes and one more
    const atOnce = Array.from({ length: 8 }, (_, model): Lag => [3 * model + 1, 3 * model, -10]);
    const free = models(8, [10, 5, 2]);
    const problem = { ...free, lags: [...free.lags, ...atOnce] };
    const left = { schedules: 600, placements: Infinity };
    expect(reworked(problem, left)).toMatchObject({ from: 23, changes: 16 });
  });

  it('goes on as long as better comes, and no longer than for a quarter of the placements', () => {
    // it takes some 9,800
    const long = reworked(models(20, [5, 4, 3, 2]), { schedules: Infinity, placements: 20_000 });
    expect(long).toMatchObject({ changes: 3 });
    expect(long.placements).toBeGreaterThan(20_000 / 4);
    // pour at once: three changes are the fewest, though two steps need no more than one
    const free = models(2, [10, 5]);
    const best = { ...free, lags: [...free.lags, [1, 0, -10], [3, 2, -10]] as const };
    const { changes, placements } = reworked(best, { schedules: Infinity, placements: 1000 });
    expect(changes).toBe(3);
    expect(Math.floor(placements / 10)).toBe(25);
  });

  it('ends with the schedules that may be tried, or when no change is needless', () => {
    expect(reworked(models(12, [10, 5]), { schedules: 7, placements: Infinity }).schedules).toBe(7);
    expect(reworked(models(12, [10]), { schedules: 7, placements: Infinity })).toMatchObject({
      schedules: 0,
    });
  });

  it('costs a placement for each job that is put back, and a twenty-fifth for each that is judged', () => {
    const { schedules, placements } = reworked(models(12, [10, 5]), { schedules: 50, placements: 10_000 });
    const perStretch = placements / schedules;
    expect(perStretch).toBeGreaterThan(2 + 24 / judged);
    expect(perStretch).toBeLessThan(24 + 24 / judged);
  });
});

describe('any schedule, stretch by stretch', () => {
  it('keeps every rule and becomes no worse', () => {
    fc.assert(
      fc.property(randomProblem({ jobs: 7, minutes: 5 }), (problem) => {
        const first = atOnce(scheduling({ ...problem, budget: 1 }));
        if (!('starts' in first)) return;
        const search = searchOf(problem);
        const given = { ...first, score: search.judge.score(first) };
        const best = atOnce(rework(search, given, { schedules: 30, placements: Infinity }));
        expect(brokenRules(problem, best)).toEqual([]);
        expect(best.score).toEqual(search.judge.score(best));
        expect(compareScores(best.score, given.score)).toBeLessThanOrEqual(0);
      }),
      { numRuns: runs(100) },
    );
  });
});
