import fc from 'fast-check';
import { expect, it } from 'vitest';
import { brokenRules } from '../../../../../src/core/solve/schedule/feasible.ts';
import {
  clearBoard,
  copyBoard,
  emptyBoard,
  isPlaced,
  put,
  takeOff,
  timesOn,
  type Board,
} from '../../../../../src/core/solve/schedule/ground/board.ts';
import { basisOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { mostUsed } from '../../../../../src/core/solve/schedule/ground/usage.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { randomProblem } from '../random-problem.ts';
import { runs } from '../runs.ts';

/** All that can be seen of a board. */
function seen({ moments, usages, heldFrom, heldUntil }: Board): unknown[] {
  const steps = usages.map(({ steps, count }) => [...steps.subarray(0, 2 * count)]);
  return [[...moments], steps, [...heldFrom], [...heldUntil]];
}

/** Jobs put on a board of a random problem one after the other, each at a start that its calendar allows. */
function whatever(
  rule: (full: Board, inTurn: Board, order: readonly number[], problem: ScheduleProblem) => void,
) {
  const any = randomProblem({ jobs: 5, minutes: 5 }).chain((problem) => {
    const jobs = [...problem.durations.keys()];
    const order = fc.shuffledSubarray(jobs, { minLength: jobs.length });
    return fc.record({ problem: fc.constant(problem), order, wanted: fc.array(fc.nat(12), { minLength: jobs.length, maxLength: jobs.length }) }); // prettier-ignore
  });
  fc.assert(
    fc.property(any, ({ problem, order, wanted }) => {
      const basis = basisOf(problem);
      if ('impossible' in basis) return;
      const { times } = basis.prepared;
      const [full, inTurn] = [emptyBoard(basis), emptyBoard(basis)];
      const startOf = (job: number): number => times[job]!.start(wanted[job]!);
      if (order.some((job) => startOf(job) === Infinity || times[job]!.end(startOf(job)) === Infinity))
        return;
      for (const job of order) put(full, job, startOf(job));
      for (const job of order.toReversed()) put(inTurn, job, startOf(job));
      rule(full, inTurn, order, problem);
    }),
    { numRuns: runs(600) },
  );
}

it('a board does not remember in which order jobs were put on it', () => {
  whatever((full, inTurn) => {
    expect(seen(inTurn)).toEqual(seen(full));
  });
});

it('is as if a job had never been there once it is taken off', () => {
  whatever((full, inTurn, order) => {
    const [first, ...others] = order;
    const { starts } = timesOn(full);
    takeOff(full, first!);
    expect(isPlaced(full, first!)).toBe(false);
    clearBoard(inTurn);
    for (const job of others) put(inTurn, job, starts[job]!);
    expect(seen(full)).toEqual(seen(inTurn));
    for (const job of others) takeOff(full, job);
    expect(seen(full)).toEqual(seen(emptyBoard(full.ground)));
  });
});

it('a copy is like it, and stays so whatever happens to the first', () => {
  whatever((full, inTurn, [first]) => {
    const copy = emptyBoard(full.ground);
    copyBoard(full, copy);
    const before = seen(full);
    takeOff(full, first!);
    expect(seen(copy)).toEqual(before);
    clearBoard(inTurn);
    expect(seen(inTurn)).toEqual(seen(emptyBoard(full.ground)));
  });
});

it('uses more than there is exactly where a schedule breaks that rule', () => {
  whatever((full, _, __, problem) => {
    const broken = brokenRules(problem, timesOn(full)).filter(({ because }) => because === 'capacity');
    const over = problem.capacities.map((capacity, resource) => mostUsed(full.usages[resource]!) > capacity);
    expect(over).toEqual(problem.capacities.map((_, at) => broken.some(({ resource }) => resource === at)));
  });
});

it('keeps a tin for good while anything of its hold has no place yet', () => {
  const moments = { from: [[0, 'start'], [1, 'start']], to: [[2, 'end'], [3, 'end']] } as const; // prettier-ignore
  const problem: ScheduleProblem = {
    durations: [5, 5, 5, 5],
    lags: [],
    demands: [[0], [0], [0], [0]],
    capacities: [1],
    holds: [{ resource: 0, count: 1, ...moments }],
  };
  const basis = basisOf(problem);
  if ('impossible' in basis) throw new Error();
  const board = emptyBoard(basis);
  const held = (): number[] => [board.heldFrom[0]!, board.heldUntil[0]!];
  put(board, 2, 40);
  put(board, 3, 60);
  expect(held()).toEqual([NaN, NaN]);
  put(board, 1, 20);
  expect(held()).toEqual([20, Infinity]);
  put(board, 0, 10);
  expect(held()).toEqual([10, 65]);
  takeOff(board, 2);
  expect(held()).toEqual([10, Infinity]);
  takeOff(board, 0);
  expect(held()).toEqual([20, Infinity]);
});
