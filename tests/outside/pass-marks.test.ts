import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/quantity/exact.ts';
import { angoff } from '../../src/core/statistics/pass-mark/angoff.ts';
import { borderlineRegression } from '../../src/core/statistics/pass-mark/borderline-regression.ts';
import { contrastingGroups } from '../../src/core/statistics/pass-mark/contrasting-groups.ts';

/**
 * Pass marks computed independently with scipy; the methods as handbooks of medical education describe them (from
 * memory).
 */
describe('a pass mark', () => {
  it('by Angoff is the mean of what the judges expect of those who only just pass', () => {
    const judges = [
      ['0.8', '0.6', '0.9', '0.7'],
      ['0.7', '0.65', '0.95', '0.6'],
      ['0.9', '0.5', '0.85', '0.75'],
    ];
    const mark = angoff(judges.map((items) => items.map(exact)));
    expect(mark.equals(exact('89/120'))).toBe(true); // 74.17 %
  });

  it('by Angoff counts items by their points', () => {
    const mark = angoff([[exact('0.5'), exact(1)]], [exact(3), exact(1)]);
    expect(mark.equals(exact('5/8'))).toBe(true); // (3 x 0.5 + 1) / 4
  });

  it('by borderline regression is the score on the line at a borderline rating', () => {
    const [g, s] = [
      [1, 2, 2, 3, 3, 4, 4, 5],
      [8, 11, 12, 14, 15, 17, 18, 20],
    ];
    const rated = g.map((rating, i) => ({ rating: exact(rating), score: exact(s[i]!) }));
    expect(borderlineRegression(rated, exact(2))!.equals(exact('11.375'))).toBe(true);
    expect(borderlineRegression(rated.slice(1, 3), exact(2))).toBeUndefined();
    expect(borderlineRegression([], exact(2))).toBeUndefined();
  });

  it('of contrasting groups is where the curves cross between them, not the second crossing at 118.7', () => {
    const [low, high] = [
      { mean: 55, deviation: 10 },
      { mean: 80, deviation: 6 },
    ];
    expect(contrastingGroups(low, high)).toBeCloseTo(69.43, 2);
    expect(contrastingGroups(high, low)).toBeCloseTo(69.43, 2);
  });

  it('of groups that spread alike is half way between them', () => {
    expect(contrastingGroups({ mean: 50, deviation: 8 }, { mean: 70, deviation: 8 })).toBeCloseTo(60, 10);
    expect(contrastingGroups({ mean: 50, deviation: 8 }, { mean: 50, deviation: 8 })).toBeUndefined();
  });
});
