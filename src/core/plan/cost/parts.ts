import type { Rational } from '../../model/values.ts';
import { type Exact, exact, one, zero } from '../../quantity/exact.ts';
import { ratio } from '../../quantity/quantity.ts';
import type { Line } from '../demand/line.ts';
import { stockFor } from '../scale/scale.ts';
import type { Draw } from '../scale/shares.ts';
import { plus } from './used.ts';

/** What a part lasts, and the cost of what ends in it, over all models of a line. */
export interface PartUsed {
  readonly lasts: Rational | undefined;
  readonly used: Exact;
}

/**
 * Used cost by part. A row belongs to the part of the steps that use it; what is used for the model as a whole, or by
 * no step, counts to the part that wears first.
 *
 * @param rows  Used cost of each row.
 */
export function usedByPart(line: Line, rows: readonly Exact[]): readonly PartUsed[] {
  const { at } = line;
  const lasts = at.parts.map((part) => part.lasts ?? at.lasts);
  const ofParts = at.parts.map(({ id }) =>
    rows.map((cost, row) => cost.mul(shareOf(line, row, id))).reduce(plus, zero),
  );
  const rest = rows.reduce(plus, zero).sub(ofParts.reduce(plus, zero));
  const first = firstWorn(lasts);
  return lasts.map((uses, part) => ({
    lasts: uses,
    used: part === first ? ofParts[part]!.add(rest) : ofParts[part]!,
  }));
}

/** The share of a row that the steps of one part use. */
function shareOf(line: Line, row: number, part: string): Exact {
  const isOwn = ({ step }: Draw): boolean => {
    const basis = line.at.steps[step]!.for;
    return basis.per === 'part' && basis.part === part;
  };
  return line.draws
    .filter(isOwn)
    .map((draw) => shareDrawn(line, draw, row))
    .reduce(plus, zero);
}

function shareDrawn({ at, needs }: Line, draw: Draw, row: number): Exact {
  if (draw.of === 'ingredient' || draw.row !== row) return zero;
  if (draw.of === 'row') return draw.share;
  const { pieces, total } = needs.rows[row]!;
  const own = pieces.filter(({ piece }) => draw.pieces.includes(piece));
  return total.value.equals(zero) ? one : ratio(stockFor(at.materials[row]!, own), total);
}

/** The part that lasts the fewest uses. */
function firstWorn(lasts: readonly (Rational | undefined)[]): number {
  const known = lasts.flatMap((uses, part) => (uses === undefined ? [] : [{ part, uses: exact(uses) }]));
  return known.reduce(
    (first, next) => (next.uses.compare(first.uses) < 0 ? next : first),
    known[0] ?? { part: 0, uses: zero },
  ).part;
}
