import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Judged, PassMark, ScoredItem } from '../../../src/core/model/module.ts';
import { exact, exactText } from '../../../src/core/quantity/exact.ts';
import { checklistScore, isPass } from '../../../src/core/scoring/checklist-score.ts';
import { passMarkOf } from '../../../src/core/scoring/pass-mark.ts';
import { timeScore } from '../../../src/core/scoring/time-score.ts';
import { time } from '../plan/a-workspace.ts';

const item = (id: string, weight: string, critical = false): ScoredItem => ({
  ...{ id, says: id, weight, critical, objectives: [] },
});
const items = [item('square', '2'), item('holds', '2', true), item('edges', '3.5')];

describe('a checklist', () => {
  // 2 + 3.5 of 7.5
  it('counts what was done by its weight', () => {
    const { points, of, share, failed } = checklistScore(items, new Set(['square', 'edges']));
    expect([points, of, share].map(exactText)).toEqual(['5.5', '7.5', '11/15']);
    expect(failed).toEqual(['holds']);
  });

  it('never lets points outvote a critical item', () => {
    const subsets = fc.subarray(items.map(({ id }) => id));
    fc.assert(
      fc.property(subsets, fc.integer({ min: 0, max: 100 }), (done, percent) => {
        const score = checklistScore(items, new Set(done));
        const passes = isPass(score, exact(percent).div(100));
        expect(passes).toBe(done.includes('holds') && score.share.compare(exact(percent).div(100)) >= 0);
      }),
    );
  });

  it('passes on the mark itself', () => {
    const score = checklistScore(items, new Set(['holds', 'edges']));
    expect([isPass(score, exact('11/15')), isPass(score, exact('12/15'))]).toEqual([true, false]);
  });
});

// The time-and-errors scoring of tasks of keyhole surgery: limit less time less penalties, never below zero; trade
// practice, from memory. Worked by hand.
describe('a time limit with penalties', () => {
  const scoring = {
    limit: time('10 min'),
    penalties: [
      { when: 'wall struck', adds: time('30 s'), atMost: 3 },
      { when: 'needle dropped', adds: time('1 min') },
    ],
  };
  it.each([
    [450, [2, 0], '90'], // 600 - 450 - 60
    [450, [5, 0], '60'], // three at most: 600 - 450 - 90
    [300, [1, 2], '150'], // 600 - 300 - 30 - 120
    [590, [1, 0], '0'],
    [700, [], '0'],
    [0, [], '600'],
  ])('%i s, penalties %j: %s left', (seconds, given, left) => {
    expect(exactText(timeScore(scoring, exact(seconds), given)!)).toBe(left);
  });

  it('without a limit is no score', () => {
    expect(timeScore({ penalties: [] }, exact(10), [])).toBeUndefined();
  });
});

/** Computed independently with scipy; the methods as handbooks of medical education describe them (from memory). */
describe('a pass mark as a share of all points', () => {
  const markOf = (judged: Judged, weights: readonly string[], more: Partial<PassMark> = {}) =>
    passMarkOf(
      { items: weights.map((weight, i) => item(`i${i}`, weight)) },
      { method: judged.method, judges: 'judges.csv', judged, ...more },
    );

  it('by Angoff', () => {
    const shares = [
      ['0.8', '0.6', '0.9', '0.7'],
      ['0.7', '0.65', '0.95', '0.6'],
      ['0.9', '0.5', '0.85', '0.75'],
    ];
    expect(exactText(markOf({ method: 'angoff', shares }, ['1', '1', '1', '1'])!)).toBe('89/120'); // 74.17 %
    expect(markOf({ method: 'angoff', shares: [] }, ['1'])).toBeUndefined();
    expect(markOf({ method: 'angoff', shares: [['1']] }, ['0'])).toBeUndefined();
  });

  it('by borderline regression: 11.375 of 20 points at the rating 2', () => {
    const [g, s] = [
      [1, 2, 2, 3, 3, 4, 4, 5],
      [8, 11, 12, 14, 15, 17, 18, 20],
    ];
    const rated = g.map((rating, i) => ({ rating: String(rating), points: String(s[i]) }));
    const judged = { method: 'borderline-regression', rated } as const;
    expect(markOf(judged, ['12', '8'])!.mul(20).equals(exact('11.375'))).toBe(true);
    // the line goes through the means, rating 3 and 14.375 points
    expect(markOf(judged, ['12', '8'], { borderline: '3' })!.mul(20).equals(exact('14.375'))).toBe(true);
    expect(markOf(judged, ['12', '8'], { borderline: '9' })).toBeUndefined();
    expect(markOf({ ...judged, rated: rated.slice(1, 3) }, ['20'])).toBeUndefined();
  });

  // Two people each give mean m and sample deviation d where they have m - d/sqrt 2 and m + d/sqrt 2: here
  // 55 ± 7.0710678 (10) and 80 ± 4.2426407 (6).
  it('of contrasting groups: 69.43 of 100 points between N(55, 10) and N(80, 6), not the second root 118.7', () => {
    const people = [
      { ready: false, points: '47.9289322' },
      { ready: false, points: '62.0710678' },
      { ready: true, points: '75.7573593' },
      { ready: true, points: '84.2426407' },
    ];
    const judged = { method: 'contrasting-groups', people } as const;
    expect(markOf(judged, ['100'])!.mul(100).valueOf()).toBeCloseTo(69.43, 2);
    expect(markOf({ ...judged, people: people.slice(0, 3) }, ['100'])).toBeUndefined();
    const alike = people.map((one) => ({ ...one, points: '50' }));
    expect(markOf({ ...judged, people: alike }, ['100'])).toBeUndefined();
  });
});
