import { Bug } from '../../diagnostic.ts';
import { commonMeasure, rational, zero, type Exact } from '../../quantity/exact.ts';

/** A pack as a shop sells it: how much it holds (more than zero) and its price (zero or more). */
export interface Pack {
  readonly holds: Exact;
  readonly price: Exact;
}

/** The same question in whole numbers: sizes and need in one common grain, prices in one common fraction of money. */
export interface WholeNumbers {
  readonly sizes: readonly bigint[];
  readonly prices: readonly bigint[];
  /** Rounded up to a whole grain, which changes no answer: whole packs only ever come to whole grains. */
  readonly need: bigint;
}

/**
 * The packs and the need in the coarsest whole numbers that lose nothing: 28 g and 56 g become 1 and 2.
 *
 * @throws {Bug} Where a need or price is below zero or a pack holds nothing.
 */
export function wholeNumbers(needed: Exact, packs: readonly Pack[]): WholeNumbers {
  refuseNonsense(needed, packs);
  const grain = commonMeasure(packs.map(({ holds }) => holds));
  const coin = commonMeasure(packs.map(({ price }) => price));
  return {
    sizes: packs.map(({ holds }) => holds.div(grain).n),
    prices: packs.map(({ price }) => price.div(coin).n),
    need: needed.div(grain).ceil().n,
  };
}

/** How many times `b` goes into `a`, rounded up; both zero or more. */
export function ceilDivide(a: bigint, b: bigint): bigint {
  return (a + b - 1n) / b;
}

function refuseNonsense(needed: Exact, packs: readonly Pack[]): void {
  if (needed.lt(zero)) throw new Bug('a need below zero', { needed: rational(needed) });
  if (packs.length === 0 && needed.gt(zero))
    throw new Bug('no packs to choose from', { needed: rational(needed) });
  for (const { holds, price } of packs) {
    if (holds.lte(zero)) throw new Bug('a pack that holds nothing', { holds: rational(holds) });
    if (price.lt(zero)) throw new Bug('a price below zero', { price: rational(price) });
  }
}
