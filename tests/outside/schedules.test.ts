import { describe, expect, it } from 'vitest';
import { brokenRules } from '../../src/core/solve/schedule/feasible.ts';
import { schedule } from '../../src/core/solve/schedule/schedule.ts';
import { psplib, withGreatestLags } from './published-schedules.ts';

/** Source: PSPLIB, Kolisch and Sprecher (1997). The best schedules known, and the best bounds known. */
describe('projects with scarce resources', () => {
  const gaps: number[] = [];
  it.each(psplib)('$name', ({ problem, bestKnown, lowerBound }) => {
    const result = schedule({ ...problem, budget: 1000 });
    if (!('starts' in result)) throw new Error(JSON.stringify(result));
    expect(brokenRules(problem, result)).toEqual([]);
    expect(result.makespan).toBeGreaterThanOrEqual(lowerBound);
    expect(result.lowerBound).toBeLessThanOrEqual(bestKnown);
    if (result.optimal) expect(result.makespan).toBe(bestKnown);
    gaps.push(result.makespan / bestKnown - 1);
  });
  it('ends, on average, within 2 % of the best schedules known, with a twentieth of the usual number of schedules', () => {
    expect(gaps).toHaveLength(psplib.length);
    expect(gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length).toBeLessThan(0.02);
  });
});

/** Source: test sets UBO and SM, Schwindt (1998); all verdicts proven. */
describe('projects with least and greatest lags', () => {
  const solvable = withGreatestLags.filter(({ bestKnown }) => bestKnown !== undefined);
  it.each(solvable)(
    '$name: a schedule that keeps every lag, no shorter than the proven optimum',
    ({ problem, bestKnown }) => {
      const result = schedule(problem);
      if (!('starts' in result)) throw new Error(JSON.stringify(result));
      expect(brokenRules(problem, result)).toEqual([]);
      expect(result.makespan).toBeGreaterThanOrEqual(bestKnown!);
      expect(result.lowerBound).toBeLessThanOrEqual(bestKnown!);
    },
  );

  const unsolvable = withGreatestLags.filter(({ bestKnown }) => bestKnown === undefined);
  it.each(unsolvable)('$name: no schedule, as has been proven', ({ problem }) => {
    expect(schedule(problem)).not.toHaveProperty('starts');
  });
});
