import { type Exact, exact, zero } from '../../quantity/exact.ts';

/**
 * The share of all points that a person who only just passes is expected to reach: the mean of what the judges expect
 * of such a person at each item, weighed by its points.
 *
 * @param judgements  Judge by judge, item by item: from 0 to 1. At least one of each, as many of each judge.
 * @param points      Of each item; one each where left out.
 * @returns Exact, from 0 to 1.
 * @source Angoff, Scales, norms and equivalent scores, in Educational Measurement (1971); from memory.
 */
export function angoff(judgements: readonly (readonly Exact[])[], points?: readonly Exact[]): Exact {
  const weightOf = (item: number): Exact => points?.[item] ?? exact(1);
  const weigh = (items: readonly Exact[]): Exact =>
    items.reduce((sum, share, item) => sum.add(share.mul(weightOf(item))), zero);
  const all = judgements[0]!.reduce((sum, _, item) => sum.add(weightOf(item)), zero);
  return judgements
    .map(weigh)
    .reduce((sum, of) => sum.add(of), zero)
    .div(all.mul(judgements.length));
}
