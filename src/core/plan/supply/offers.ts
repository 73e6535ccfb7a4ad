import type { Material } from '../../model/material.ts';
import type { Program } from '../../model/program.ts';
import { inCurrency } from '../../money/money.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import { convert } from '../../quantity/quantity.ts';
import { densityOf, packContent } from '../scale/requirements.ts';

/** A pack as the plan may buy it: exact content in the unit of the need, price in the program's currency. */
export interface Offer {
  /** Index into the material's `packs`. */
  readonly pack: number;
  readonly holds: Exact;
  /** Absent where no price is known, or no rate for its currency. */
  readonly price?: Exact;
  readonly supplier?: string;
}

/** So many of one pack. */
export interface Choice {
  readonly offer: Offer;
  readonly count: number;
}

/** Packs with a price; where none has one, or none of those will do, all of them without. */
export function offersOf(material: Material, unit: string, program: Program): readonly (readonly Offer[])[] {
  const all = material.packs.map((_, pack) => offerOf(material, pack, unit));
  const priced = all.flatMap((offer) => {
    const price = packPrice(material, offer.pack, program);
    return price ? [{ ...offer, price }] : [];
  });
  return priced.length > 0 ? [priced, all] : [all];
}

function offerOf(material: Material, index: number, unit: string): Offer {
  const pack = material.packs[index]!;
  return {
    pack: index,
    holds: convert(packContent(pack), unit, densityOf(material)).value,
    ...(pack.from === undefined ? {} : { supplier: pack.from }),
  };
}

function packPrice({ packs }: Material, index: number, program: Program): Exact | undefined {
  const { price } = packs[index]!;
  return price && inCurrency(price, program);
}

/** A sum over all packs chosen. */
export function sumOf(choice: readonly Choice[], of: (offer: Offer) => Exact): Exact {
  return choice.reduce((all, { offer, count }) => all.add(of(offer).mul(exact(count))), zero);
}

/** As far as prices are known. */
export function priceOf(choice: readonly Choice[]): Exact {
  return sumOf(choice, ({ price }) => price ?? zero);
}

/**
 * Price of one unit of a material, by the first pack listed: the author's usual one, so that what is used costs the
 * same in every batch. Zero where free; `undefined` where that pack, or its price, is missing.
 */
export function unitPrice(material: Material, unit: string, program: Program): Exact | undefined {
  if (material.free) return zero;
  if (material.packs.length === 0) return undefined;
  return packPrice(material, 0, program)?.div(offerOf(material, 0, unit).holds);
}
