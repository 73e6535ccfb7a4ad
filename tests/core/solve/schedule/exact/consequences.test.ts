import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conflictIn } from '../../../../../src/core/solve/schedule/exact/conflict.ts';
import { consequencesOf } from '../../../../../src/core/solve/schedule/exact/consequences.ts';
import { horizonOf } from '../../../../../src/core/solve/schedule/exact/horizon.ts';
import { isExact } from '../../../../../src/core/solve/schedule/exact/is-exact.ts';
import { leastEnd } from '../../../../../src/core/solve/schedule/exact/least-end.ts';
import {
  earliest,
  latest,
  networkOf,
  type Network,
} from '../../../../../src/core/solve/schedule/exact/network.ts';
import { twinOrder } from '../../../../../src/core/solve/schedule/exact/twins.ts';
import { feasible } from '../../../../../src/core/solve/schedule/feasible.ts';
import { groundOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { prepare } from '../../../../../src/core/solve/schedule/ground/prepared.ts';
import type { Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { leastMakespan } from '../every-schedule.ts';
import { runs } from '../runs.ts';
import { randomLags } from './random-lags.ts';

/** Jobs that each need so much of one thing, of which there are `capacity`. */
function work(
  durations: readonly number[],
  needs: readonly number[],
  capacity: number,
  more: Partial<ScheduleProblem> = {},
): ScheduleProblem {
  return { durations, demands: needs.map((need) => [need]), capacities: [capacity], lags: [], ...more };
}
const network = (problem: ScheduleProblem): Network => networkOf(problem, prepare(problem));

/** The same where all is to end in the end. */
function ending(problem: ScheduleProblem): Network {
  const net = network(problem);
  net.distances.settle(net.end, net.begin, -60);
  return net;
}

/** What follows where all is to end by a minute: the windows of all jobs, or what stands against it. */
function windows(problem: ScheduleProblem, endBy: number): unknown {
  const net = network(problem);
  const obstacle = consequencesOf(net)(endBy);
  if (obstacle) return obstacle;
  return problem.durations.map((minutes, job) => [earliest(net, job), latest(net, job) + minutes]);
}
/** Up to three short jobs, unless said otherwise. */
const whatever = (rule: (problem: ScheduleProblem, net: Network) => void, most = 3): void =>
  fc.assert(
    fc.property(randomLags({ jobs: most, minutes: 3 }), (problem) => {
      if (!('impossible' in groundOf(problem))) rule(problem, network(problem));
    }),
    { numRuns: runs(600) },
  );

describe('what follows when all is to end by a minute', () => {
  it.each<[what: string, problem: ScheduleProblem, endBy: number, follows: unknown]>([
    ['nothing but the window itself, where there is room', work([4, 4], [1, 1], 2), 9, [[0, 9], [0, 9]]],
    [
      'one comes after the other where both need the bench, and only one can be first',
      work([4, 4], [1, 1], 1, { releases: [1, 0], deadlines: [Infinity, 6] }),
      12,
      [[4, 12], [0, 6]],
    ],
    [
      'neither can be first: they do not both have the time',
      work([4, 4], [1, 1], 1),
      7,
      { because: 'capacity', jobs: [0, 1], resource: 0 },
    ],
    [
      'a third keeps clear of what two certainly use, though either alone would leave it room',
      work([6, 6, 3], [1, 1, 1], 2, { deadlines: [7, 7, Infinity] }),
      12,
      [[0, 7], [0, 7], [6, 12]],
    ],
    [
      'and comes before it, where it cannot come after',
      work([6, 6, 3], [1, 1, 1], 2, { releases: [3, 4, 0] }),
      10,
      [[3, 10], [4, 10], [0, 4]],
    ],
    [
      'three that are certainly there at once, for two places',
      work([6, 6, 6], [1, 1, 1], 2),
      8,
      { because: 'capacity', jobs: [0, 1, 2], resource: 0 },
    ],
    ['it cannot end so soon at all', work([4, 4], [1, 1], 2), 3, { because: 'deadline', jobs: [] }],
  ])('%s', (_, problem, endBy, follows) => {
    expect(windows(problem, endBy)).toEqual(follows);
  }); // prettier-ignore

  it('leaves every schedule that ends by then', () => {
    let seen = 0;
    whatever((problem, net) => {
      const least = leastMakespan(problem, 16);
      if (least === undefined) return;
      seen++;
      expect(consequencesOf(net)(least)).toBeUndefined();
    });
    expect(seen).toBeGreaterThan(runs(200));
  });
});

describe('the least end that is not refuted', () => {
  it('is no later than the least of all schedules, and refuted a minute before', () => {
    whatever((problem, net) => {
      const least = leastMakespan(problem, 16);
      if (least === undefined) return;
      const end = leastEnd(net, consequencesOf(net), 0, 40);
      expect(end).toBeLessThanOrEqual(least);
      if (typeof end === 'number' && end > earliest(net, net.end))
        expect(consequencesOf(network(problem))(end - 1)).toBeDefined();
    });
  });
  it('is searched for from a bound to below an end at hand, or refuted altogether', () => {
    const net = network(work([4, 4, 4], [1, 1, 1], 1));
    expect(leastEnd(net, consequencesOf(net), 0, 40)).toBe(12);
    expect(leastEnd(net, consequencesOf(net), 15, 40)).toBe(15);
    expect(leastEnd(net, consequencesOf(net), 0, 13)).toBe(12);
    expect(leastEnd(net, consequencesOf(net), 0, 12)).toMatchObject({ because: 'capacity' });
    // nothing of what was tried on the way is left
    expect([earliest(net, 0), latest(net, 0)]).toEqual([0, Infinity]);
  });
});

describe('a conflict', () => {
  it('is of jobs that use too much together, and not without any one of them', () => {
    let seen = 0;
    whatever((problem, net) => {
      const starts = problem.durations.map((_, job) => earliest(net, job));
      const ends = starts.map((start, job) => start + problem.durations[job]!);
      const conflict = conflictIn(ending(problem));
      expect(conflict === undefined).toBe(feasible({ ...problem, releases: [], deadlines: [] }, { starts, ends })); // prettier-ignore
      if (!conflict) return;
      seen++;
      const { jobs, resource, pair } = conflict;
      const needs = jobs.map((job) => problem.demands[job]![resource]!);
      const sum = needs.reduce((all, need) => all + need, 0);
      expect(sum).toBeGreaterThan(problem.capacities[resource]!);
      for (const need of needs) expect(sum - need).toBeLessThanOrEqual(problem.capacities[resource]!);
      expect(Math.max(...jobs.map((job) => starts[job]!))).toBeLessThan(Math.min(...jobs.map((job) => ends[job]!))); // prettier-ignore
      if (pair) expect(jobs).toEqual(expect.arrayContaining([...pair]));
    }, 8);
    expect(seen).toBeGreaterThan(runs(20));
  });
  it('is of the fewest jobs: those that need most', () => {
    expect(conflictIn(ending(work([4, 4, 4, 4], [1, 1, 2, 2], 3)))).toMatchObject({ jobs: [2, 3] });
  });
  it('is none where one job ends as the next begins, or all fit', () => {
    const inTurn = work([4, 4], [1, 1], 1, { lags: [[0, 1, 4]] });
    expect(conflictIn(ending(inTurn))).toBeUndefined();
    expect(conflictIn(ending(work([4, 4], [1, 2], 3)))).toBeUndefined();
  });
  it.each<[what: string, durations: number[], more: Partial<ScheduleProblem>, pair: [number, number]]>([
    ['20 min follow job 1, which goes first', [5, 5, 20], { lags: [[1, 2, 5]] }, [1, 0]],
    ['20 min follow job 0, which goes first', [5, 5, 20], { lags: [[0, 2, 5]] }, [0, 1]],
    ['3 min follow the short job, which goes first all the same', [9, 2, 3], { lags: [[1, 2, 2]] }, [1, 0]],
    ['the long job can begin only 5 min later', [9, 8, 1], { releases: [5, 0, 0] }, [1, 0]],
    ['the long job can begin only 5 min later', [8, 9, 1], { releases: [0, 5, 0] }, [0, 1]],
  ])('is resolved in the order that delays the end least: %s', (_, durations, more, pair) => {
    const problem = work(durations, [1, 1, 0], 1, more);
    expect(conflictIn(ending(problem))).toEqual({ jobs: [0, 1], resource: 0, pair });
  });
  it('that leaves fewer choices comes first', () => {
    // jobs 0 and 1 may come in either order, at any time; 2 and 3 must both end by 9, 4 min each
    const problem = work([4, 4, 4, 4], [1, 1, 1, 1], 1, {
      demands: [[1, 0], [1, 0], [0, 1], [0, 1]], // prettier-ignore
      capacities: [1, 1],
      deadlines: [60, 60, 9, 9],
    });
    expect(conflictIn(ending(problem))).toMatchObject({ jobs: [2, 3], resource: 1 });
    const swapped = { ...problem, deadlines: [9, 9, 60, 60] };
    expect(conflictIn(ending(swapped))).toMatchObject({ jobs: [0, 1], resource: 0 });
  });
  it('cannot be resolved where its jobs certainly overlap', () => {
    const problem = work([4, 4], [1, 1], 1, { lags: [[0, 1, -1], [1, 0, -1]] }); // prettier-ignore
    expect(conflictIn(ending(problem))).toEqual({ jobs: [0, 1], resource: 0 });
    // and comes even before one that just fits
    const both = work([4, 4, 4, 4], [0, 0, 0, 0], 1, {
      demands: [[1, 0], [1, 0], [0, 1], [0, 1]], // prettier-ignore
      capacities: [1, 1],
      deadlines: [8, 8, 60, 60],
      lags: [[2, 3, -1], [3, 2, -1]], // prettier-ignore
    });
    expect(conflictIn(ending(both))).toEqual({ jobs: [2, 3], resource: 1 });
  });
});

describe('by when a problem ends, if it can at all', () => {
  it('is no sooner than the shortest schedule', () => {
    whatever((problem) => {
      const least = leastMakespan(problem, 16);
      if (least !== undefined) expect(horizonOf(prepare(problem))).toBeGreaterThanOrEqual(least);
    });
  });
  it('is after all releases, waits and work one after the other', () => {
    const problem = work([4, 5, 6], [1, 1, 1], 1, { from: 10, releases: [10, 13, 12], lags: [[0, 1, 9]] });
    expect(horizonOf(prepare(problem))).toBe(3 + 9 + 5 + 6);
  });
});

describe('groups of jobs that nothing tells apart', () => {
  // melt, then pour within 45 min, three times
  const lags = [0, 2, 4].flatMap((melt): Lag[] => [
    [melt, melt + 1, 10],
    [melt + 1, melt, -45],
  ]);
  const models = work([10, 5, 10, 5, 10, 5], [1, 1, 1, 1, 1, 1], 1, { lags });
  it('begin in the order of their numbers', () => {
    expect(twinOrder(models)).toEqual([
      [0, 2, 0],
      [2, 4, 0],
    ]);
  });
  it.each<[what: string, more: Partial<ScheduleProblem>]>([
    ['length', { durations: [10, 5, 10, 6, 10, 5] }],
    ['need', { demands: [[1], [1], [1], [0], [1], [1]] }],
    ['release', { releases: [0, 0, 0, 5, 0, 0] }],
    ['deadline', { deadlines: [90, 90, 90, 80, 90, 90] }],
    ['lags', { lags: lags.with(3, [3, 2, -60]) }],
    ['edges', { lags: lags.with(3, [3, 2, -45, 'start', 'end']) }],
  ])('are not those that differ by a %s', (_, more) => {
    expect(twinOrder({ ...models, ...more })).toEqual([[0, 4, 0]]);
  });
  it('are told apart by nothing that is only listed in another order', () => {
    expect(twinOrder({ ...models, lags: lags.toReversed() })).toEqual(twinOrder(models));
    expect(twinOrder({ ...models, lags: [...lags.slice(0, 2), ...lags.slice(2).toReversed()] })).toEqual(
      twinOrder(models),
    );
  });
  it('are one group where a lag binds them', () => {
    expect(twinOrder({ ...models, lags: [...lags, [1, 2, 0]] })).toEqual([]);
    expect(twinOrder({ ...models, lags: [...lags, [5, 3, -90]] })).toEqual([]);
  });
});

describe('the table of least times', () => {
  it('holds 250 jobs and no more', () => {
    const jobs = (many: number) => work(new Array<number>(many).fill(1), new Array<number>(many).fill(1), 1);
    expect([isExact(jobs(250)), isExact(jobs(251))]).toEqual([true, false]);
  });
});
