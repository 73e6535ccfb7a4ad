import type { Workspace } from '../../model/workspace.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import { type Measure, add, ratio } from '../../quantity/quantity.ts';
import type { Line } from '../demand/line.ts';
import { unitPrice } from '../supply/offers.ts';
import { isGuideUse } from '../../model/guide-use.ts';

/**
 * Used cost of each row of a line's materials: what ends in the models, with waste, at the price of the usual packs. A
 * row that draws on a mix bears its share of all that is in the mix. What has no price counts as nothing.
 */
export function usedByRow({ at, needs }: Line, workspace: Workspace): readonly Exact[] {
  return needs.rows.map(({ row, usual }) => {
    const { use } = at.materials[row]!;
    const mix = needs.mixes.find((need) => need.mix === use);
    if (!mix) return isGuideUse(use) ? zero : priceOf(use, usual, workspace);
    const all = needs.rows
      .filter((other) => at.materials[other.row]!.use === use)
      .map((other) => other.usual);
    const drawn = all.reduce(add);
    const price = mix.ingredients.map((part) => priceOf(part.use, part.usual, workspace)).reduce(plus, zero);
    return drawn.value.equals(zero) ? zero : price.mul(ratio(usual, drawn));
  });
}

export const plus = (sum: Exact, next: Exact): Exact => sum.add(next);

function priceOf(id: string, amount: Measure, { materials, program }: Workspace): Exact {
  const price = unitPrice(materials[id]!, amount.unit, program);
  return amount.value.mul(price ?? zero);
}
