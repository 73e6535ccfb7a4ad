import type { Material } from '../../model/material.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import { convert } from '../../quantity/quantity.ts';
import { type Cut, type ToCutFrom, cutting } from '../cut/cut.ts';
import { asHolding, leftUncut, lessAmount, together } from '../cut/cut-left.ts';
import type { ToCut } from '../cut/cut-pieces.ts';
import { cuttingPlan, pieceExtent } from '../cut/cutting-plan.ts';
import type { OnHand } from '../demand.ts';
import type { Choice, Offer } from '../supply/offers.ts';
import { type OfOneSize, amountOnHand, extentOf, sidesOf, sizesOnHand } from '../supply/on-hand.ts';
import type { Requirement } from '../result.ts';
import { type Buying, atLeastZero, packsFor } from './want.ts';

/** What a material is cut into, and what there is of it. */
export interface ByCutting {
  readonly toCut: ToCut;
  readonly onHand: OnHand | undefined;
  readonly budget: number;
}

/**
 * What is cut: whole packs of sheets, rolls or rods that hold all pieces. Amounts without a size, of the same material,
 * are taken from what is left uncut, and more is bought where that is not enough.
 */
export function buyByCutting(
  { amount: { value: needed, unit } }: Requirement,
  material: Material,
  { toCut, onHand, budget }: ByCutting,
): Buying {
  const sizes = sizesOnHand(onHand, toCut.by);
  const base = toCut.by === 'lengths' ? 'mm' : 'mm²';
  const unsized = onHand && sizes.length === 0 ? convert(amountOnHand(onHand, unit), base).value : zero;
  const amounts = atLeastZero(convert({ value: needed, unit }, base).value.sub(pieceExtent(toCut)));
  const inUnit = (size: Exact): Exact => convert({ value: size, unit: base }, unit).value;
  const packOf = (offer: Offer) => {
    const { holds } = material.packs[offer.pack]!;
    return { offer, sides: sidesOf(holds), count: holds.count };
  };
  return function* (open) {
    const from = { toCut, onHand: sizes, packs: open.map(packOf), budget };
    const found = yield* cutting(from);
    if (!found) return undefined;
    const uncut = leftUncut(found, from);
    const missing = atLeastZero(amounts.sub(unsized).sub(extentOf(uncut)));
    const more = packsFor(inUnit(missing), open);
    const left = together([...uncut, ...more.map(({ offer, count }) => times(packOf(offer), count))]);
    const rest = lessAmount(left, atLeastZero(amounts.sub(unsized)));
    return {
      packs: merged([...found.choice, ...more]),
      fromStock: inUnit(takenFromStock(found, from, amounts, unsized)),
      left: inUnit(extentOf(rest).add(atLeastZero(unsized.sub(amounts)))),
      cut: { plan: cuttingPlan(material.id, found, from), left: rest.map(asHolding) },
    };
  };
}

function times({ sides, count }: OfOneSize, packs: number): OfOneSize {
  return { sides, count: count * packs };
}

/** Pieces cut from what was on hand, and as much of the amounts as is left of that. */
function takenFromStock({ layouts }: Cut, from: ToCutFrom, amounts: Exact, unsized: Exact): Exact {
  const own = layouts.filter(({ pack }) => pack === undefined);
  const pieces = own.flatMap((layout) => layout.pieces);
  const there = unsized.add(extentOf(leftUncut({ choice: [], layouts: own }, from)));
  const sizes = pieces.map(({ width, height }) => ({
    sides: width.n === 0n ? [height] : [width, height],
    count: 1,
  }));
  return extentOf(sizes).add(there.compare(amounts) < 0 ? there : amounts);
}

/** One entry for each pack, in the order of the packs. */
function merged(choices: readonly Choice[]): readonly Choice[] {
  const packs = [...new Set(choices.map(({ offer }) => offer.pack))].sort((a, b) => a - b);
  return packs.map((pack) => {
    const own = choices.filter(({ offer }) => offer.pack === pack);
    return { offer: own[0]!.offer, count: own.reduce((sum, { count }) => sum + count, 0) };
  });
}
