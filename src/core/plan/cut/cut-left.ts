import type { Holding } from '../../model/material.ts';
import { type Exact, rational, zero } from '../../quantity/exact.ts';
import { type Cut, type ToCutFrom, fitsOneOf } from './cut.ts';
import { type OfOneSize, extent } from '../supply/on-hand.ts';

/**
 * What is left uncut: whole sheets and rods, and of those that are cut the strip above the pieces and one more gap,
 * where it is not scrap: some piece of this plan could still be cut from it. The largest first.
 */
export function leftUncut(
  { choice, layouts }: Pick<Cut, 'choice' | 'layouts'>,
  { toCut, onHand, packs }: ToCutFrom,
): readonly OfOneSize[] {
  const there = [
    ...onHand,
    ...choice.map(({ offer, count }) => {
      const pack = packs.find((own) => own.offer.pack === offer.pack)!;
      return { sides: pack.sides, count: pack.count * count };
    }),
  ];
  const begun = layouts.map(({ width, length }) => ({ sides: sidesOf(width, length), count: -1 }));
  const offcuts = layouts.map(({ width, length, used }) => ({
    sides: sidesOf(width, length.sub(used).sub(toCut.gap)),
    count: 1,
  }));
  const isUseful = (offcut: OfOneSize): boolean => toCut.kinds.some((kind) => fitsOneOf(kind, [offcut]));
  return together([...there, ...begun, ...offcuts.filter(isUseful)]).filter(({ count }) => count > 0);
}

/** Of a rod the length alone. */
function sidesOf(width: Exact, length: Exact): readonly Exact[] {
  return width.n === 0n ? [length] : [width, length];
}

/** Those of one size counted together, the largest first. */
export function together(all: readonly OfOneSize[]): readonly OfOneSize[] {
  const bySize = new Map<string, OfOneSize>();
  for (const { sides, count } of all) {
    const name = sides.map((side) => side.toFraction()).join();
    bySize.set(name, { sides, count: count + (bySize.get(name)?.count ?? 0) });
  }
  return [...bySize.values()].sort((a, b) => extent(b.sides).compare(extent(a.sides)));
}

/** What is left when so much area (or length) is taken as well: from the smallest first, off their length. */
export function lessAmount(left: readonly OfOneSize[], amount: Exact): readonly OfOneSize[] {
  const last = left.at(-1);
  if (!last || amount.compare(zero) <= 0) return left;
  const one = extent(last.sides);
  const others = [...left.slice(0, -1), ...(last.count > 1 ? [{ ...last, count: last.count - 1 }] : [])];
  if (one.compare(amount) <= 0) return lessAmount(others, amount.sub(one));
  const length = last.sides.at(-1)!;
  const rest = [...last.sides.slice(0, -1), length.sub(length.mul(amount).div(one))];
  return together([...others, { sides: rest, count: 1 }]);
}

export function asHolding({ sides, count }: OfOneSize): Holding {
  const [first, ...more] = sides.map((side) => ({ value: rational(side), unit: 'mm' }));
  return { count, each: more.length > 0 ? { sides: [first!, ...more] } : first! };
}
