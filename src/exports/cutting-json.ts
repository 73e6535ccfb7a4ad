import type { CutLayout, CutPiece, CuttingPlan, PlannedLine } from '../core/plan/result.ts';
import type { Pack } from '../core/model/material.ts';
import { exactText } from '../core/quantity/exact.ts';
import type { Program } from '../core/model/program.ts';
import { printHolding } from '../core/quantity/print.ts';
import { lineName } from './line-name.ts';
import { inOwnCurrency } from './money-text.ts';

/**
 * How one material is cut: every sheet, roll or rod with its pieces. Lengths are exact and in mm, `x` across and `y`
 * along, from the lower left corner.
 */
export function cuttingJson(
  { material, by, layouts, bound, reached, usedFraction }: CuttingPlan,
  lines: readonly PlannedLine[],
  packs: readonly Pack[],
  program: Program,
) {
  const figure = (value: CuttingPlan['reached']): string =>
    bound.of === 'cost' ? inOwnCurrency(value, program) : exactText(value);
  return {
    material,
    by,
    reached: { [bound.of]: figure(reached) },
    bound: { [bound.of]: figure(bound.value) },
    usedFraction: exactText(usedFraction),
    layouts: layouts.map((layout) => layoutJson(layout, lines, packs)),
  };
}

/** `pack` is the pack that it comes in; left out where it is cut from stock on hand. */
function layoutJson(
  { pack, width, length, used, pieces }: CutLayout,
  lines: readonly PlannedLine[],
  packs: readonly Pack[],
) {
  return {
    ...(pack === undefined ? {} : { pack: printHolding(packs[pack]!.holds) }),
    width: exactText(width),
    length: exactText(length),
    used: exactText(used),
    pieces: pieces.map((piece) => pieceJson(piece, lines[piece.line]!)),
  };
}

/** Of an extra piece no model is said. */
function pieceJson({ row, piece, model, x, y, width, height, turned }: CutPiece, line: PlannedLine) {
  return {
    ...lineName(line),
    row: line.at.materials[row]!.id,
    piece,
    ...(model === undefined ? {} : { model }),
    x: exactText(x),
    y: exactText(y),
    width: exactText(width),
    height: exactText(height),
    turned,
  };
}
