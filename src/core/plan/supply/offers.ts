import type { Material } from '../model/material.ts';
import type { Program } from '../model/program.ts';
import { inCurrency } from '../money/money.ts';
import { type Exact, zero } from '../quantity/exact.ts';
import { type Measure, convert } from '../quantity/quantity.ts';
import type { Requirement } from './result.ts';
import { densityOf, packContent } from './requirements.ts';

/** A pack as the plan may buy it: exact content in the unit of the need, price in the program's currency. */
export interface Offer {
  /** Index into the material's `packs`. */
  readonly pack: number;
  readonly holds: Exact;
  /** Absent where no price is known, or no rate for its currency. */
  readonly price?: Exact;
  readonly supplier?: string;
}

/** What must be bought of a material, and what is for sale. */
export interface Want {
  readonly material: Material;
  readonly unit: string;
  readonly needed: Exact;
  readonly inStock: Exact;
  /** Need less stock, zero or more; zero of what is free. */
  readonly toBuy: Exact;
  /** Packs with a price; where none has one, all of them. */
  readonly offers: readonly Offer[];
}

/** @param stock  On hand, in any unit of its dimension; nothing where left out. */
export function wantOf(
  requirement: Requirement,
  material: Material,
  stock: Measure | undefined,
  program: Program,
): Want {
  const { value: needed, unit } = requirement.amount;
  const inStock = stock ? convert(stock, unit, densityOf(material)).value : zero;
  const missing = needed.sub(inStock);
  const toBuy = material.free || missing.compare(zero) < 0 ? zero : missing;
  const offers = material.packs.map((_, pack) => offerOf(material, pack, unit, program));
  const priced = offers.filter(({ price }) => price);
  return { material, unit, needed, inStock, toBuy, offers: priced.length > 0 ? priced : offers };
}

function offerOf(material: Material, index: number, unit: string, program: Program): Offer {
  const pack = material.packs[index]!;
  const price = pack.price && inCurrency(pack.price, program);
  return {
    pack: index,
    holds: convert(packContent(pack), unit, densityOf(material)).value,
    ...(price ? { price } : {}),
    ...(pack.from === undefined ? {} : { supplier: pack.from }),
  };
}

/**
 * Price of one unit of a material, by the first pack listed: the author's usual one, so that what is used costs the
 * same in every batch. Zero where free; `undefined` where that pack, or its price, is missing.
 */
export function unitPrice(material: Material, unit: string, program: Program): Exact | undefined {
  if (material.free) return zero;
  const usual = material.packs[0] && offerOf(material, 0, unit, program);
  return usual?.price?.div(usual.holds);
}
