import { describe, expect, it } from 'vitest';
import { branch } from '../../src/core/solve/schedule/exact/branch.ts';
import { brokenRules } from '../../src/core/solve/schedule/feasible.ts';
import { psplib, withGreatestLags } from './published-schedules.ts';

/**
 * Projects with least and greatest lags.
 *
 * @source Test sets UBO and SM: Schwindt (1998), Verfahren zur Lösung des ressourcenbeschränkten
 *         Projektdauerminimierungsproblems mit planungsabhängigen Zeitfenstern; Kolisch, Schwindt and Sprecher (1999).
 *         All verdicts proven; see `meta` of the file.
 */
describe('projects with least and greatest lags', () => {
  const possible = withGreatestLags.filter(({ bestKnown }) => bestKnown !== undefined);
  it.each(possible)('$name: $bestKnown, proven to be shortest', ({ problem, bestKnown }) => {
    const result = branch(problem);
    if (!('starts' in result)) throw new Error(JSON.stringify(result));
    const ends = result.starts.map((start, job) => start + problem.durations[job]!);
    expect(brokenRules(problem, { starts: result.starts, ends })).toEqual([]);
    expect(result).toMatchObject({ makespan: bestKnown, proven: true, lowerBound: bestKnown });
  });

  const impossible = withGreatestLags.filter(({ bestKnown }) => bestKnown === undefined);
  it.each(impossible)('$name: proven to have no schedule', ({ problem }) => {
    const result = branch(problem);
    if (!('impossible' in result)) throw new Error(JSON.stringify(result));
    expect(result.impossible.jobs.length).toBeGreaterThan(0);
  });

  it('covers schedules and proofs that there is none', () => {
    expect([possible.length, impossible.length]).toEqual([21, 7]);
  });
});

/** @source PSPLIB, set j30: Kolisch and Sprecher, EJOR 96 (1997) 205–216; the optima are proven. */
describe('projects of 30 jobs, where a shortest schedule is at hand', () => {
  const projects = psplib.filter(({ name }) => /^j30\d/.test(name));
  const results = projects.map(({ problem, bestKnown }) =>
    branch(problem, { upper: bestKnown, nodes: 3000 }),
  );

  it('no shorter schedule is made up, and no bound is too high', () => {
    results.forEach((result, index) => {
      if (!('open' in result)) throw new Error(JSON.stringify(result));
      expect(result.lowerBound).toBeLessThanOrEqual(projects[index]!.bestKnown);
    });
  });

  it('nine of ten are proven to have no shorter one within 3,000 nodes', () => {
    const bounds = results.map((result) => ('lowerBound' in result ? result.lowerBound : Infinity));
    const proven = bounds.filter((bound, index) => bound === projects[index]!.bestKnown);
    expect(projects).toHaveLength(20);
    expect(proven.length).toBeGreaterThanOrEqual(18);
  });
});
