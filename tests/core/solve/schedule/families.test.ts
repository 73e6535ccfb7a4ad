import { expect, it } from 'vitest';
import { families } from '../../../../src/core/solve/schedule/ground/families.ts';
import { prepare } from '../../../../src/core/solve/schedule/ground/prepared.ts';

it('counts jobs as one family that are tied both ways or hold something together, over any number of steps', () => {
  const prepared = prepare({
    durations: [1, 1, 1, 1, 1],
    // 0 and 1 are tied both ways; 1 to 2 is a mould; 2 to 3 only follows; 4 is alone
    lags: [
      [0, 1, 1],
      [1, 0, -5],
      [2, 3, 1],
    ],
    demands: [[], [], [], [], []],
    capacities: [1],
    holds: [{ resource: 0, count: 1, from: [[1, 'start']], to: [[2, 'end']] }],
  });
  expect(families(prepared).map((family) => family.toSorted())).toEqual([
    [0, 1, 2],
    [0, 1, 2],
    [0, 1, 2],
    [3],
    [4],
  ]);
});
