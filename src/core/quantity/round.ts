import type { Exact } from './exact.ts';
import { exact, floor, one } from './exact.ts';

/** The least multiple of `step` that is not below `x`. */
export function roundUpTo(x: Exact, step: Exact): Exact {
  return x.div(step).ceil().mul(step);
}

/** The multiple of `step` nearest to `x`; halves away from zero. */
export function roundTo(x: Exact, step: Exact): Exact {
  const steps = x.div(step);
  const away = steps.abs().add(exact('1/2')).floor().mul(step);
  return steps.s < 0n ? away.neg() : away;
}

/**
 * A whole number of units shared out by weight, so that the shares add up to it.
 *
 *     10 units by 1 : 1 : 1   ->  3.33 3.33 3.33  ->  3 3 3, one left, to the first  ->  4 3 3
 *
 * @param totalUnits  Whole, zero or more.
 * @param weights  Zero or more each, at least one of them; all zero counts as all alike.
 * @returns Whole shares that sum to `totalUnits`. What is left goes to the largest fractions; ties: the first.
 * @source Largest remainder method (Hamilton 1792), from memory.
 */
export function largestRemainder(totalUnits: number, weights: readonly Exact[]): number[] {
  const sum = weights.reduce((all, weight) => all.add(weight), exact(0));
  const fractionOf = (weight: Exact): Exact => (sum.n === 0n ? one.div(weights.length) : weight.div(sum));
  const exactShares = weights.map((weight) => fractionOf(weight).mul(exact(totalUnits)));
  const shares = exactShares.map((share) => floor(share));
  const left = totalUnits - shares.reduce((all, share) => all + share, 0);
  for (const index of byRemainder(exactShares).slice(0, left)) shares[index]! += 1;
  return shares;
}

/** Indexes, largest fraction first; alike ones stay in their order. */
function byRemainder(shares: readonly Exact[]): number[] {
  const remainders = shares.map((share) => share.sub(share.floor()));
  return remainders.map((_, index) => index).sort((a, b) => remainders[b]!.compare(remainders[a]!));
}
