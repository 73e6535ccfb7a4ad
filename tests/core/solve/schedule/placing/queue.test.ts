import { describe, expect, it } from 'vitest';
import { basisOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { prepare } from '../../../../../src/core/solve/schedule/ground/prepared.ts';
import { orderWithin, pushedWithin } from '../../../../../src/core/solve/schedule/placing/order-within.ts';
import { queue, type Queue } from '../../../../../src/core/solve/schedule/placing/queue.ts';
import type { Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';

/** So many jobs, a stove (0) and a tin (1). */
function jobs(many: number, lags: readonly Lag[]): ScheduleProblem {
  const durations = Array.from({ length: many }, () => 5);
  return { durations, lags, demands: durations.map(() => [1, 1]), capacities: [1, 1] };
}
/** The place of each job, by the line. */
const rankOf = (line: readonly number[]): Int32Array => Int32Array.from(line, (_, job) => line.indexOf(job));

describe('a queue of jobs', () => {
  /** The queue with its jobs in line, in words of jobs instead of blocks. */
  function inLine(line: readonly number[], lags: readonly Lag[] = []) {
    const prepared = prepare(jobs(line.length, lags));
    const { blocks, blockOf } = prepared;
    const all: Queue = queue(prepared);
    all.lineUp(rankOf(line));
    const jobOf = (block: number): number => (block < 0 ? -1 : blocks[block]![0]!);
    return {
      next: () => jobOf(all.next()),
      placed: (job: number) => all.placed(blockOf[job]!),
      park: (job: number, usage: number) => all.park(blockOf[job]!, usage),
      wake: (usage: number) => all.wake(usage),
      goBackTo: (job: number) => all.goBackTo(blockOf[job]!).map(jobOf),
      lineUp: (again: readonly number[]) => all.lineUp(rankOf(again)),
    };
  }

  it('lets the first in line come whose forerunners all have a place', () => {
    const line = inLine([2, 1, 0, 3], [[0, 2, 0], [1, 2, 0]]); // prettier-ignore
    expect(line.next()).toBe(1);
    line.placed(1);
    expect(line.next()).toBe(0);
    expect(line.next()).toBe(3);
    line.placed(3);
    line.placed(0);
    expect(line.next()).toBe(2);
    line.placed(2);
    expect(line.next()).toBe(-1);
  });

  it('begins anew with another line', () => {
    const line = inLine([0, 1, 2]);
    line.placed(line.next());
    line.park(line.next(), 1);
    line.lineUp([2, 1, 0]);
    expect([line.next(), line.next(), line.next()]).toEqual([2, 1, 0]);
  });

  it.each([0, 1])('wakes the first of those who wait for %i, and the next when it has its place', (usage) => {
    const line = inLine([0, 1, 2, 3]);
    line.park(line.next(), usage);
    line.park(line.next(), usage);
    line.placed(line.next());
    line.wake(1 - usage);
    line.wake(usage);
    expect(line.next()).toBe(0);
    line.placed(0);
    expect(line.next()).toBe(1);
    line.placed(1);
    expect(line.next()).toBe(3);
  });

  it('lets the next one sleep on when the first has to wait once more', () => {
    const line = inLine([0, 1, 2, 3]);
    line.park(line.next(), 1);
    line.park(line.next(), 1);
    line.wake(1);
    expect(line.next()).toBe(0);
    line.park(0, 0);
    expect(line.next()).toBe(2);
    line.placed(2);
    expect(line.next()).toBe(3);
  });

  it('does not wake the next one for a job that had not been waiting', () => {
    const line = inLine([0, 1, 2]);
    line.park(line.next(), 0);
    line.placed(line.next());
    expect(line.next()).toBe(2);
  });

  it('lets all who wait try once more before it gives up, again after each that found its place', () => {
    const line = inLine([0, 1, 2]);
    line.park(line.next(), 0);
    line.park(line.next(), 1);
    line.park(line.next(), 1);
    expect(line.next()).toBe(0);
    line.park(0, 0);
    expect(line.next()).toBe(1);
    line.placed(1);
    expect(line.next()).toBe(2);
    line.park(2, 1);
    expect(line.next()).toBe(0);
    line.park(0, 0);
    expect(line.next()).toBe(2);
    line.park(2, 1);
    expect(line.next()).toBe(-1);
  });

  it('lets all who wait for one tin try at the last, though one has its place', () => {
    const line = inLine([0, 1, 2]);
    line.placed(line.next());
    line.park(line.next(), 0);
    line.park(line.next(), 0);
    expect([line.next(), line.next()]).toEqual([1, 2]);
  });

  it('leaves what came before a job, and lets its followers come', () => {
    const line = inLine([0, 1, 2], [[0, 2, 0]]); // prettier-ignore
    line.placed(line.next());
    line.placed(line.next());
    expect(line.goBackTo(1)).toEqual([1]);
    expect([line.next(), line.next(), line.next()]).toEqual([1, 2, -1]);
  });

  it('takes back all that came since a job, the last first, and nobody waits any more', () => {
    const line = inLine([0, 1, 2, 3, 4], [[1, 3, 0]]); // prettier-ignore
    line.placed(line.next());
    line.placed(line.next());
    line.park(line.next(), 0);
    line.placed(line.next());
    expect(line.goBackTo(1)).toEqual([3, 1]);
    expect(line.next()).toBe(1);
    expect(line.next()).toBe(2);
    expect(line.next()).toBe(4);
    line.placed(1);
    expect(line.next()).toBe(3);
    line.placed(3);
    expect(line.next()).toBe(-1);
  });
});

describe('jobs that are tied to each other', () => {
  const tied: ScheduleProblem = jobs(4, [
    [0, 1, 10],
    [1, 0, -45],
    [1, 2, 0],
    [2, 1, 0],
    [0, 3, 5],
  ]);
  function pushed(problem: ScheduleProblem): readonly (readonly number[])[] {
    const basis = basisOf(problem);
    if ('impossible' in basis) throw new Error(JSON.stringify(basis));
    return pushedWithin(basis);
  }

  it('push each other in one direction, and nobody outside', () => {
    // pour (1) comes after melt (0); 1 and 2 begin together, the lower number first
    expect(pushed(tied)).toEqual([[1], [2], [], []]);
    // of two that begin together no other than the lower number is first, however the lags are put
    expect(pushed(jobs(2, [[1, 0, 0], [0, 1, 0]]))).toEqual([[1], []]); // prettier-ignore
    // of two that may begin in any order neither is pushed
    expect(pushed(jobs(2, [[0, 1, -5], [1, 0, -5]]))).toEqual([[], []]); // prettier-ignore
    // 1 begins 3 before 0
    expect(pushed(jobs(2, [[1, 0, 3], [0, 1, -3]]))).toEqual([[], [0]]); // prettier-ignore
  });
  it('come by rank, but none before what it must follow', () => {
    expect(orderWithin([0, 1, 2], rankOf([2, 1, 0, 3]), pushed(tied))).toEqual([0, 1, 2]);
    expect(orderWithin([0, 1, 2], rankOf([2, 1, 0, 3]), [[], [], [], []])).toEqual([2, 1, 0]);
    expect(orderWithin([0, 1, 2], rankOf([1, 2, 0, 3]), [[1], [], [], []])).toEqual([2, 0, 1]);
    expect(orderWithin([0, 1, 2], rankOf([1, 2, 0, 3]), [[1], [], [1], []])).toEqual([2, 0, 1]);
    expect(orderWithin([0, 1, 2], rankOf([1, 0, 2, 3]), [[1], [], [1], []])).toEqual([0, 2, 1]);
    expect(orderWithin([3], rankOf([0, 1, 2, 3]), pushed(tied))).toEqual([3]);
  });
});
