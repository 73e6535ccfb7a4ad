import type { Holding, Material } from '../../model/material.ts';
import type { InPieces } from '../../in-pieces.ts';
import { type Exact, ceil, zero } from '../../quantity/exact.ts';
import { convert } from '../../quantity/quantity.ts';
import { leastCostPacks } from '../../solve/packs/least-cost-packs.ts';
import type { OnHand } from '../demand.ts';
import { amountOnHand } from '../supply/on-hand.ts';
import type { Choice, Offer } from '../supply/offers.ts';
import { sumOf } from '../supply/offers.ts';
import { densityOf } from '../scale/requirements.ts';
import type { CuttingPlan, Requirement } from '../result.ts';

/** What is needed of a material, what is for sale, and what would be bought. */
export interface Want {
  readonly material: Material;
  readonly needed: Requirement['amount'];
  readonly offers: readonly Offer[];
  /** The cheapest among some of the offers; `undefined` where they cannot do. */
  readonly buyFrom: (open: readonly Offer[]) => Basket | undefined;
}

/** Whole packs of one material, and what becomes of them. Amounts in the unit of the need. */
export interface Basket {
  readonly packs: readonly Choice[];
  readonly fromStock: Exact;
  readonly left: Exact;
  /** Of what is cut: how, and what is left of it as sheets, offcuts and rods. */
  readonly cut?: { readonly plan: CuttingPlan; readonly left: readonly Holding[] };
}

/** What would be bought among some of the offers, worked out in small pieces. */
export type Buying = (open: readonly Offer[]) => InPieces<Basket | undefined>;

/** The same, whose answers are kept by the packs that are open. */
export function answeredOnce(buying: Buying): Buying {
  const known = new Map<string, Basket | undefined>();
  return function* (open) {
    const key = open.map(({ pack, price }) => (price ? pack : `${pack} `)).join();
    if (!known.has(key)) known.set(key, yield* buying(open));
    return known.get(key);
  };
}

/**
 * What is measured out: need less stock, in whole packs at the least price; where no price is known, as many as needed
 * of the usual pack. What does several models is bought whole, unless the stock is enough.
 *
 *     a can of 400 mL does 30 models; 12 of them take 160 mL, 240 mL are left
 */
export function buyByAmount(
  { amount: { value: needed, unit }, unused }: Requirement,
  material: Material,
  onHand: OnHand | undefined,
): Buying {
  const stock = onHand && amountOnHand(onHand, unit);
  const inStock = stock ? convert(stock, unit, densityOf(material)).value : zero;
  const isEnough = material.free || inStock.compare(needed) >= 0;
  const missing = isEnough ? zero : atLeastZero(needed.add(unused.value).sub(inStock));
  const isForSale = material.packs.length > 0;
  return function* (open) {
    yield;
    if (missing.compare(zero) > 0 && isForSale && open.length === 0) return undefined;
    const packs = packsFor(missing, open);
    const bought = sumOf(packs, ({ holds }) => holds);
    return {
      packs,
      fromStock: inStock.compare(needed) < 0 ? inStock : needed,
      left: material.free ? zero : atLeastZero(inStock.add(bought).sub(needed)),
    };
  };
}

/** The cheapest whole packs that hold so much. */
export function packsFor(missing: Exact, open: readonly Offer[]): readonly Choice[] {
  const [usual] = open;
  if (!usual || missing.compare(zero) <= 0) return [];
  if (!usual.price) return [{ offer: usual, count: ceil(missing.div(usual.holds)) }];
  const { counts } = leastCostPacks(
    missing,
    open.map(({ holds, price }) => ({ holds, price: price! })),
  );
  return open.map((offer, i) => ({ offer, count: counts[i]! })).filter(({ count }) => count > 0);
}

export function atLeastZero(x: Exact): Exact {
  return x.compare(zero) < 0 ? zero : x;
}
