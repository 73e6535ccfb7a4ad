import { describe, expect, it } from 'vitest';
import { feasible } from '../../../../src/core/solve/schedule/feasible.ts';
import { groundOf } from '../../../../src/core/solve/schedule/ground/ground.ts';
import type { Hold, Lag, ScheduleProblem } from '../../../../src/core/solve/schedule/problem.ts';
import { schedule } from '../../../../src/core/solve/schedule/schedule.ts';

/**
 * Blocks of gel (invented): one pour fills so many tins at once, each block chills 100 min and is then unmoulded in
 * 5 min by any of plenty of hands. A tin is held from the pour to the end of unmoulding.
 */
function poured(sizes: readonly number[], tins: number, after = 0): ScheduleProblem {
  const durations: number[] = [];
  const lags: Lag[] = [];
  const holds: Hold[] = [];
  for (const size of sizes) {
    const pour = durations.push(10) - 1;
    for (let block = 0; block < size; block++) {
      const unmould = durations.push(5) - 1;
      lags.push([pour, unmould, 100, 'end', 'start']);
      holds.push({ resource: 0, count: 1, from: [[pour, 'start']], to: [[unmould, 'end']] });
      if (after > 0) lags.push([unmould, durations.push(after) - 1, 0, 'end', 'start']);
    }
  }
  return { durations, lags, holds, demands: durations.map(() => [0]), capacities: [tins], budget: 200 };
}

// a round takes 10 + 100 + 5 = 115 min
describe('tins that are filled again and again', () => {
  it.each<[what: string, problem: ScheduleProblem, minutes: number]>([
    ['4 tins, fours poured one after the other', poured([4, 4, 4], 4), 3 * 115],
    ['6 tins hold one four at a time, not one and a half', poured([4, 4, 4], 6), 3 * 115],
    ['8 tins hold two fours', poured([4, 4, 4], 8), 2 * 115],
    ['one more block takes a round of its own', poured([4, 4, 4, 1], 4), 4 * 115],
    ['a smaller last pour fits beside a four', poured([4, 4, 2], 6), 2 * 115],
    ['what follows the last round counts too', poured([4, 4], 4, 60), 2 * 115 + 60],
  ])('are proven to need so long: %s', (_, problem, minutes) => {
    const result = schedule(problem);
    expect(result).toMatchObject({ makespan: minutes, lowerBound: minutes, optimal: true });
    expect('starts' in result && feasible(problem, result)).toBe(true);
  });
});

describe('a bound by rounds', () => {
  const rounds = (problem: ScheduleProblem) => {
    const ground = groundOf(problem);
    return 'bound' in ground && ground.bound;
  };
  it('counts only what is held of the tins in question', () => {
    // three pours in tins, of which there are three; and each stands on a tray, of which there is one
    const problem = poured([1, 1, 1], 3);
    const trays = problem.holds!.map((hold) => ({ ...hold, resource: 1 }));
    const both = { ...problem, capacities: [3, 1], demands: problem.durations.map(() => [0, 0]) };
    expect(rounds({ ...both, holds: [...problem.holds!, ...trays] })).toBe(3 * 115);
    expect(rounds({ ...both, holds: problem.holds! })).toBe(115);
    expect(rounds({ ...both, capacities: [3, 3], holds: [...problem.holds!, ...trays] })).toBe(115);
  });
  it('leaves aside holds of which nobody knows how long they last', () => {
    const problem = poured([1, 1, 1], 1);
    expect(rounds({ ...problem, lags: problem.lags.slice(1) })).toBe(2 * 115);
  });
  it('takes pours that begin with the same jobs as one, in whatever order these are named', () => {
    const problem = poured([2], 2);
    const [one, other] = problem.holds!;
    const begun = [[0, 'start'], [0, 'end']] as const; // prettier-ignore
    const holds = [
      { ...one!, from: begun },
      { ...other!, from: begun.toReversed() },
    ];
    expect(rounds({ ...problem, holds })).toBe(rounds(problem));
  });
});
