import type { Holding } from '../../model/material.ts';
import { type Exact, one, zero } from '../../quantity/exact.ts';
import { type Measure, add, convert, measure } from '../../quantity/quantity.ts';
import { dimensionOf } from '../../quantity/units.ts';
import type { OnHand } from '../demand.ts';
import { packContent } from '../scale/requirements.ts';
import type { CuttingPlan } from '../result.ts';

/** Sheets, offcuts or rods of one size that are there. */
export interface OfOneSize {
  /** Width and length, or the one length; in mm. */
  readonly sides: readonly Exact[];
  readonly count: number;
}

/** All that is on hand of a material: of sheets and offcuts their area, of rods their length. */
export function amountOnHand(onHand: OnHand, unit: string): Measure {
  if (!('pieces' in onHand)) return measure(onHand);
  const [first, ...rest] = onHand.pieces.map((holds) => packContent({ holds }));
  return first ? rest.reduce(add, first) : { value: zero, unit };
}

/** What pieces can be cut from. An amount of area has no size; an amount of length is one rod. */
export function sizesOnHand(onHand: OnHand | undefined, by: CuttingPlan['by']): readonly OfOneSize[] {
  if (!onHand) return [];
  const holdings = 'pieces' in onHand ? onHand.pieces : [{ count: 1, each: onHand }];
  const wanted = by === 'lengths' ? 1 : 2;
  return holdings
    .map((holds) => ({ sides: sidesOf(holds), count: holds.count }))
    .filter(({ sides }) => sides.length === wanted && sides.every(({ n }) => n > 0n));
}

/** In mm: two of a sheet, one of a rod, none of what is not cut. */
export function sidesOf({ each }: Holding): readonly Exact[] {
  const sides = 'sides' in each ? each.sides : dimensionOf(each.unit) === 'length' ? [each] : [];
  return sides.map((side) => convert(measure(side), 'mm').value);
}

/** The area of a sheet in mm², the length of a rod in mm. */
export function extent(sides: readonly Exact[]): Exact {
  return sides.reduce((all, side) => all.mul(side), one);
}

/** The same of all of them together. */
export function extentOf(all: readonly OfOneSize[]): Exact {
  return all.reduce((sum, { sides, count }) => sum.add(extent(sides).mul(count)), zero);
}
