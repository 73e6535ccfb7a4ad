import { type Exact, exact, zero } from '../../quantity/exact.ts';
import type { Cut, ToCutFrom } from './cut.ts';
import type { ToCut } from './cut-pieces.ts';
import { extentOf } from '../supply/on-hand.ts';
import type { CuttingPlan } from '../result.ts';

/** How a material is cut, with what no plan can beat beside it. */
export function cuttingPlan(material: string, found: Cut, { toCut, packs }: ToCutFrom): CuttingPlan {
  const isPriced = packs.every(({ offer }) => offer.price);
  const figure = isPriced
    ? { of: 'cost' as const, bound: found.bound, reached: found.worth }
    : unpriced(found, toCut);
  return {
    material,
    by: toCut.by,
    layouts: found.layouts,
    bound: { of: figure.of, value: figure.bound },
    reached: figure.reached,
    usedFraction: pieceExtent(toCut).div(extentCut(found, toCut)),
  };
}

/** Sheets; of rolls and rods the length that is used, which is never less than their pieces take without any gap. */
function unpriced({ layouts, fewest }: Cut, toCut: ToCut) {
  const used = layouts.reduce((sum, layout) => sum.add(layout.used), zero);
  if (toCut.by === 'sheets')
    return { of: 'sheets' as const, bound: exact(fewest), reached: exact(layouts.length) };
  const widest = layouts.reduce((most, { width }) => (width.compare(most) > 0 ? width : most), zero);
  const across = toCut.by === 'roll' ? widest : exact(1);
  return { of: 'length' as const, bound: pieceExtent(toCut).div(across), reached: used };
}

/** Area, or length, of all pieces. */
export function pieceExtent({ kinds }: ToCut): Exact {
  return extentOf(kinds.map((kind) => ({ sides: kind.sides, count: kind.for.length })));
}

/** Of sheets and rods that are cut into all, of rolls what is used of their length. */
function extentCut({ layouts }: Cut, { by }: ToCut): Exact {
  return layouts.reduce((sum, { width, length, used }) => {
    if (by === 'lengths') return sum.add(length);
    return sum.add(width.mul(by === 'roll' ? used : length));
  }, zero);
}
