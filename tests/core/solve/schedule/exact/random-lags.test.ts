import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { branch } from '../../../../../src/core/solve/schedule/exact/branch.ts';
import { isExact } from '../../../../../src/core/solve/schedule/exact/is-exact.ts';
import { brokenRules } from '../../../../../src/core/solve/schedule/feasible.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { leastMakespan } from '../every-schedule.ts';
import { randomLags } from './random-lags.ts';
import { runs } from '../runs.ts';

/** `latest`: releases by 3, then a chain of all jobs, each pushing the next by its minutes and a lag as long. */
const sizes = [
  { jobs: 4, minutes: 2, latest: 19, runs: 1500 },
  { jobs: 3, minutes: 4, latest: 27, runs: 1000 },
];

describe.each(sizes)('up to $jobs jobs of up to $minutes minutes, against trying every schedule', (size) => {
  it('finds the shortest schedule, or proves that there is none', { timeout: 120_000 }, () => {
    const seen = { possible: 0, impossible: 0 };
    const isRight = fc.property(randomLags(size), (problem) => {
      const least = leastMakespan(problem, size.latest);
      const result = branch(problem);
      seen[least === undefined ? 'impossible' : 'possible']++;
      if (least === undefined) expect(result).toHaveProperty('impossible');
      else expect(result).toMatchObject({ makespan: least, proven: true, lowerBound: least });
    });
    fc.assert(isRight, { numRuns: runs(size.runs) });
    expect(Math.min(seen.possible, seen.impossible)).toBeGreaterThan(runs(size.runs) / 20);
  });
});

describe('random problems of up to 9 jobs', () => {
  const problems = randomLags({ jobs: 9, minutes: 6 });
  const holds = (rule: (problem: ScheduleProblem) => void, numRuns = 500): void =>
    fc.assert(fc.property(problems, rule), { numRuns: runs(numRuns) });

  it('every schedule keeps every rule, by a checker of its own', () => {
    holds((problem) => {
      expect(isExact(problem)).toBe(true);
      const result = branch(problem);
      if (!('starts' in result)) return;
      const ends = result.starts.map((start, job) => start + problem.durations[job]!);
      expect(brokenRules(problem, { starts: result.starts, ends })).toEqual([]);
      expect(result.makespan).toBe(Math.max(0, ...ends));
    });
  });

  it('a bound holds whatever the number of nodes, and more nodes never do worse', () => {
    holds((problem) => {
      const best = branch(problem);
      let makespan = Infinity;
      for (const nodes of [0, 1, 2, 5, 20]) {
        const result = branch(problem, { nodes });
        if ('impossible' in result) expect(best).toHaveProperty('impossible');
        else if ('makespan' in best) expect(result.lowerBound).toBeLessThanOrEqual(best.makespan);
        if (!('starts' in result)) continue;
        expect(result.makespan).toBeLessThanOrEqual(makespan);
        makespan = result.makespan;
      }
    });
  });

  it('a schedule at hand is improved, or proven to be shortest', () => {
    holds((problem) => {
      const best = branch(problem);
      if (!('makespan' in best)) return;
      const { makespan } = best;
      expect(branch(problem, { upper: makespan })).toEqual({ open: true, lowerBound: makespan });
      expect(branch(problem, { upper: makespan + 1 })).toMatchObject({ makespan, proven: true });
    });
  });

  it('the same problem has the same answer, whenever it begins', () => {
    holds((problem) => {
      const result = branch(problem);
      expect(branch(structuredClone(problem))).toEqual(result);
      for (const by of [-1000, 1000]) {
        const shifted = branch(moved(problem, by));
        if (!('starts' in result)) expect(shifted).toEqual(result);
        else expect(shifted).toEqual({ ...result, starts: result.starts.map((start) => start + by) });
      }
    });
  });

  it('a second model like the first takes no less time', () => {
    holds((problem) => {
      const [one, two] = [branch(problem), branch(twice(problem))];
      if ('starts' in one && 'starts' in two)
        expect(two.makespan).toBeGreaterThanOrEqual(one.proven ? one.makespan : 0);
      if ('impossible' in one) expect(two).not.toHaveProperty('starts');
    }, 150);
  });
});

function moved(problem: ScheduleProblem, by: number): ScheduleProblem {
  const { releases = [], deadlines = [] } = problem;
  const all = (minutes: readonly number[]): number[] => minutes.map((minute) => minute + by);
  return { ...problem, from: by, releases: all(releases), deadlines: all(deadlines) };
}

/** Two of everything that has to be done, with what there was to do it. */
function twice(problem: ScheduleProblem): ScheduleProblem {
  const { durations, demands, lags, releases = [], deadlines = [] } = problem;
  const jobs = durations.length;
  return {
    ...problem,
    durations: [...durations, ...durations],
    demands: [...demands, ...demands],
    releases: [...releases, ...releases],
    deadlines: [...deadlines, ...deadlines],
    lags: [
      ...lags,
      ...lags.map(([i, j, least, edgeOfI = 'start', edgeOfJ = 'start']) => {
        return [i + jobs, j + jobs, least, edgeOfI, edgeOfJ] as const;
      }),
    ],
  };
}
