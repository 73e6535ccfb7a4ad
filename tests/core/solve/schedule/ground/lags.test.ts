import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  distancesFrom,
  positiveCircle,
  tails,
} from '../../../../../src/core/solve/schedule/ground/longest-paths.ts';
import { prepare } from '../../../../../src/core/solve/schedule/ground/prepared.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { runs } from '../runs.ts';
import { anyLags, leastOf, leastTimes } from './any-lags.ts';

const whatever = (rule: (problem: ScheduleProblem) => void): void =>
  fc.assert(fc.property(anyLags({ jobs: 6 }), rule), { numRuns: runs(600) });
const hasCircle = (problem: ScheduleProblem): boolean =>
  leastTimes(problem).some((row, job) => row[job]! > 0);

describe('blocks', () => {
  it('are the jobs that are tied to each other both ways, each in one block', () => {
    whatever((problem) => {
      const { blocks, blockOf } = prepare(problem);
      const isTied = leastTimes(problem).map((row) => row.map((least) => least > -Infinity));
      expect(blocks.flat().sort((a, b) => a - b)).toEqual([...problem.durations.keys()]);
      blockOf.forEach((block, i) => {
        expect(blocks[block]).toContain(i);
        expect(blocks[block]).toEqual(isTied[i]!.flatMap((tied, j) => (tied && isTied[j]![i] ? [j] : [])));
      });
    });
  });

  it('come after all that they wait for', () => {
    whatever((problem) => {
      const { blockOf } = prepare(problem);
      for (const [i, j] of problem.lags) expect(blockOf[i]).toBeLessThanOrEqual(blockOf[j]!);
    });
  });

  it('are followed by those that never start before one of their jobs', () => {
    whatever((problem) => {
      const { blocks, blockOf, followers } = prepare(problem);
      const pushing = problem.lags.filter((lag) => leastOf(problem, lag) >= 0);
      blocks.forEach((_, block) => {
        const after = pushing.filter(([i]) => blockOf[i] === block).map(([, j]) => blockOf[j]!);
        expect(new Set(followers[block])).toEqual(new Set(after.filter((other) => other !== block)));
        expect(new Set(followers[block]).size).toBe(followers[block]!.length);
      });
    });
  });
});

describe('a circle of jobs that wait for each other', () => {
  it('is found exactly where a job would have to come after itself', () => {
    let seen = 0;
    whatever((problem) => {
      const circle = positiveCircle(prepare(problem));
      expect(circle !== undefined).toBe(hasCircle(problem));
      if (circle) seen++;
    });
    expect(seen).toBeGreaterThan(runs(60));
  });

  it('names each of its jobs once, from the one with the least index on, each pushing the next', () => {
    whatever((problem) => {
      const circle = positiveCircle(prepare(problem));
      if (!circle) return;
      expect(new Set(circle).size).toBe(circle.length);
      expect(circle[0]).toBe(Math.min(...circle));
      const around = circle.map((job, at) => {
        const next = circle[(at + 1) % circle.length];
        const between = problem.lags.filter(([i, j]) => i === job && j === next);
        return Math.max(...between.map((lag) => leastOf(problem, lag)));
      });
      expect(around.reduce((sum, least) => sum + least, 0)).toBeGreaterThan(0);
    });
  });
});

describe('the longest way by lags', () => {
  it('is the least time from one job to all that it pushes, directly or not', () => {
    whatever((problem) => {
      if (hasCircle(problem)) return;
      const { outOf } = prepare(problem);
      for (const shortest of [-Infinity, 0]) {
        const far = leastTimes(problem, shortest)[0]!.map((least, job) => [job, least] as const);
        expect(distancesFrom(0, outOf, shortest)).toEqual(
          new Map(far.filter(([, least]) => least > -Infinity)),
        );
      }
    });
  });

  it('to the end of everything is the tail of a job', () => {
    whatever((problem) => {
      if (hasCircle(problem)) return;
      const far = leastTimes(problem);
      const longest = (own: readonly number[]): number[] =>
        far.map((row) => Math.max(...row.map((least, job) => least + own[job]!)));
      expect(tails(prepare(problem))).toEqual(longest(problem.durations));
    });
  });

  it('is longer where a deadline comes before the end of all', () => {
    // glue by minute 10 where all ends at 30: as if 20 min followed it. Cut 5 comes right before it.
    const problem: ScheduleProblem = {
      durations: [5, 3, 2],
      lags: [[0, 1, 5]],
      demands: [[], [], []],
      capacities: [],
      deadlines: [Infinity, 10, 40],
    };
    expect(tails(prepare(problem), 30)).toEqual([5 + 3 + 20, 3 + 20, 2]);
  });
});
