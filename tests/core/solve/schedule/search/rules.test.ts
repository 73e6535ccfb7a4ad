import { describe, expect, it } from 'vitest';
import { groundOf, type Ground } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import type { Lag, ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { interchangeable } from '../../../../../src/core/solve/schedule/search/interchangeable.ts';
import { rankOf, rules } from '../../../../../src/core/solve/schedule/search/rules.ts';

/** Each of four models is sawn (job 0 to 3), drilled (4 to 7) and painted (8 to 11). */
const models = [0, 1, 2, 3];
const after = (i: number, j: number): Lag => [i, j, 0, 'end', 'start'];
const problem: ScheduleProblem = {
  durations: [9, 9, 9, 9, 5, 5, 5, 5, 2, 2, 2, 2],
  lags: models.flatMap((model) => [after(model, 4 + model), after(4 + model, 8 + model)]),
  demands: Array.from({ length: 12 }, () => [1]),
  capacities: [1],
  kinds: [0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2],
  crew: 0,
};
function ground(more: Partial<ScheduleProblem> = {}): Ground {
  const found = groundOf({ ...problem, ...more });
  if ('impossible' in found) throw new Error(JSON.stringify(found));
  return found;
}
const lines = (more: Partial<ScheduleProblem> = {}) => [...rules(ground(more))];
const stepByStep = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];

describe('lines to begin with', () => {
  it('are the models one by one, each from its first job to its last', () => {
    expect(lines()[0]).toEqual([0, 4, 8, 1, 5, 9, 2, 6, 10, 3, 7, 11]);
  });
  it('put first what must start first, or end first, if nothing is to be late', () => {
    expect(lines()[1]).toEqual(stepByStep);
    // model 3 by minute 20: 16 min of work, where all else has until 64
    const urgent = { deadlines: Array.from({ length: 12 }, (_, job) => (job === 11 ? 20 : Infinity)) };
    expect(lines(urgent)[1]).toEqual([3, 7, 11, 0, 1, 2, 4, 5, 6, 8, 9, 10]);
    expect(lines(urgent)[2]).toEqual([3, 7, 11, 0, 1, 2, 4, 5, 6, 8, 9, 10]);
  });
  it('tell a long job that must start soon from a short one that must end soon', () => {
    // job 1 takes 30 min and may end at 40; job 0 takes 2 and must end by 20
    const pair = { durations: [2, 30], lags: [], demands: [[1], [1]], kinds: [0, 0], deadlines: [20, 40] };
    const [, byStart, byEnd] = lines(pair);
    expect([byStart, byEnd]).toEqual([
      [1, 0],
      [0, 1],
    ]);
  });
  it('are waves, from one of all models to waves of one', () => {
    const [one, two, three, four, ...more] = lines().slice(3);
    expect(one).toEqual(stepByStep);
    expect(two).toEqual([0, 1, 4, 5, 8, 9, 2, 3, 6, 7, 10, 11]);
    expect(three).toEqual([0, 1, 4, 5, 8, 9, 2, 6, 10, 3, 7, 11]);
    expect(four).toEqual([0, 4, 8, 1, 5, 9, 2, 6, 10, 3, 7, 11]);
    expect(more).toEqual([]);
  });
  it('are waves by what could start earliest, however the jobs are numbered', () => {
    const paintedFirst = {
      lags: models.flatMap((model) => [after(8 + model, 4 + model), after(4 + model, model)]),
    };
    expect(lines(paintedFirst)[3]).toEqual([8, 9, 10, 11, 4, 5, 6, 7, 0, 1, 2, 3]);
  });
  it('name each job once, also one that follows several', () => {
    const all = { lags: [...problem.lags, ...models.map((model) => after(model, 11))] };
    for (const line of [...lines(), ...lines(all)])
      expect(line.toSorted((a, b) => a - b)).toEqual(stepByStep);
  });
  it('give each job its place', () => {
    expect([...rankOf([2, 0, 1])]).toEqual([1, 2, 0]);
  });
});

describe('jobs that may change places', () => {
  const sets = (more: Partial<ScheduleProblem>): number[][] => {
    const { blocks } = ground(more).prepared;
    return interchangeable(ground(more)).map((set) => set.flatMap((block) => blocks[block]!));
  };

  it('are alike and of one kind', () => {
    expect(sets({ lags: [] })).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6, 7],
      [8, 9, 10, 11],
    ]);
  });
  it('are in the order of their numbers, backwards where time runs backwards', () => {
    expect(sets({ lags: [after(3, 0)] })[0]).toEqual([0, 1, 2, 3]);
    expect(sets({ lags: [], reversed: true })[0]).toEqual([3, 2, 1, 0]);
  });
  it('are at least two, and none without a kind', () => {
    const kinds = [0, 0, 0, 3, 1, 1, -1, -1, 2, 4, 5, 6];
    expect(sets({ lags: [], kinds })).toEqual([
      [0, 1, 2],
      [4, 5],
    ]);
  });
  it('differ where one takes longer', () => {
    const durations = [9, 9, 8, 8, 5, 5, 5, 4, 2, 2, 2, 2];
    expect(sets({ lags: [], durations })).toEqual([
      [0, 1],
      [2, 3],
      [4, 5, 6],
      [8, 9, 10, 11],
    ]);
  });
});
