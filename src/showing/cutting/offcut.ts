import type { CutLayout, CuttingPlan, Plan } from '../../core/plan/result.ts';
import type { Holding } from '../../core/model/material.ts';
import { type Exact, exact, zero } from '../../core/quantity/exact.ts';
import { convert, measure } from '../../core/quantity/quantity.ts';

/**
 * How much of a sheet, roll or length is left whole when its last cut is made; none where no piece of the plan could
 * be cut from that: the same as the shopping list has as left over.
 *
 *     |  1  |  2  |'       |      ' the cut takes its own width
 */
export function offcutOf(layout: CutLayout, cutting: CuttingPlan, plan: Plan): Exact {
  const left = layout.length.sub(layout.used).sub(gapOf(cutting, plan));
  const kept = plan.purchases.find(({ material }) => material === cutting.material)?.leftPieces;
  const isKept = kept?.some((holding) => isOfSize(holding, layout.width, left)) ?? true;
  return isKept && left.compare(zero) > 0 ? left : zero;
}

/** The width of a cut: the largest that any of its rows asks for. */
function gapOf({ layouts }: CuttingPlan, { lines }: Plan): Exact {
  const rows = new Set(
    layouts.flatMap(({ pieces }) => pieces.map(({ line, row }) => lines[line]?.at.materials[row])),
  );
  const gaps = [...rows].flatMap((row) => (row?.gap ? [convert(measure(row.gap), 'mm').value] : []));
  return gaps.reduce((most, gap) => (gap.compare(most) > 0 ? gap : most), zero);
}

function isOfSize({ each }: Holding, width: Exact, length: Exact): boolean {
  const sides = 'sides' in each ? each.sides : [each];
  const own = width.equals(zero) ? [length] : [width, length];
  return sides.length === own.length && sides.every(({ value }, i) => exact(value).equals(own[i]!));
}
