import { describe, expect, it } from 'vitest';
import { brokenRules } from '../../src/core/solve/schedule/feasible.ts';
import { plainBound } from '../../src/core/solve/schedule/plain/plain-bound.ts';
import { searchPlain } from '../../src/core/solve/schedule/plain/search-plain.ts';
import { psplib } from './published-schedules.ts';

/**
 * Projects with scarce resources, each solved with a fortieth of the usual number of schedules; `npm run bench` prints
 * the distances for more.
 *
 * @source PSPLIB: Kolisch and Sprecher, PSPLIB: a project scheduling problem library, EJOR 96 (1997) 205–216; the best
 *         schedules and the best bounds known.
 */
describe.each([
  ['j30', 20, 0.015],
  ['j60', 5, 0.04],
  ['j120', 3, 0.06],
] as const)('projects with scarce resources, set %s', (set, count, most) => {
  const projects = psplib.filter((project) => project.set === set);
  const distances: number[] = [];

  it.each(projects)('$name', ({ problem, bestKnown, lowerBound }) => {
    const bound = plainBound(problem);
    expect(bound).toBeLessThanOrEqual(bestKnown);
    const { starts } = searchPlain(problem, bound, 500);
    const ends = starts.map((start, job) => start + problem.durations[job]!);
    expect(brokenRules(problem, { starts, ends })).toEqual([]);
    expect(Math.max(...ends)).toBeGreaterThanOrEqual(lowerBound);
    distances.push(Math.max(...ends) / bestKnown - 1);
  });

  it(`ends, on average, within ${100 * most} % of the best schedules known`, () => {
    expect(distances).toHaveLength(count);
    expect(distances.reduce((sum, distance) => sum + distance, 0) / count).toBeLessThan(most);
  });
});
