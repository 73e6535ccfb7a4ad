import type { Diagnostic } from '../../diagnostic.ts';
import { type InPieces, atOnce } from '../../in-pieces.ts';
import type { Material } from '../../model/material.ts';
import type { Program } from '../../model/program.ts';
import type { Workspace } from '../../model/workspace.ts';
import { buyByCutting } from './buy-by-cutting.ts';
import type { ToCut } from '../cut/cut-pieces.ts';
import type { PlanSettings } from '../demand.ts';
import { chargeFor, suppliersToBuyFrom } from './deliveries.ts';
import { refusal } from '../refusal.ts';
import { type Choice, type Offer, offersOf, priceOf } from '../supply/offers.ts';
import type { CuttingPlan, Delivery, Purchase, Requirement } from '../result.ts';
import { type Basket, type Buying, type Want, answeredOnce, buyByAmount } from './want.ts';

/** Whole packs, how they are cut, and who brings them. */
export interface Bought {
  /** One for each requirement, in its order. */
  readonly purchases: readonly Purchase[];
  readonly cutting: readonly CuttingPlan[];
  readonly deliveries: readonly Delivery[];
}

/** What decides what is bought. */
export interface ToBuy {
  readonly requirements: readonly Requirement[];
  /** What is cut, by material. */
  readonly pieces: ReadonlyMap<string, ToCut>;
  readonly workspace: Workspace;
  readonly stock: PlanSettings['stock'];
  /** Pieces that may be laid in search of better layouts of each material. */
  readonly cutting: number;
}

/**
 * Each need with what is for sale; what would be bought is worked out once for each choice of packs.
 *
 * @returns Or why not: a piece fits no pack of its material.
 */
export function* wanting(
  work: ToBuy,
): InPieces<readonly Want[] | { readonly refused: readonly Diagnostic[] }> {
  const wants: Want[] = [];
  const refused: Diagnostic[] = [];
  for (const requirement of work.requirements) {
    const material = work.workspace.materials[requirement.material]!;
    const buying = answeredOnce(waysToBuy(requirement, material, work));
    const choices = offersOf(material, requirement.amount.unit, work.workspace.program);
    const offers = yield* firstThatDoes(choices, buying);
    if (!offers) refused.push(refusal('piece-fits-no-pack', { material: material.name }));
    else
      wants.push({ material, needed: requirement.amount, offers, buyFrom: (open) => atOnce(buying(open)) });
  }
  return refused.length > 0 ? { refused } : wants;
}

function waysToBuy(requirement: Requirement, material: Material, { pieces, stock, cutting }: ToBuy): Buying {
  const toCut = pieces.get(material.id);
  const onHand = stock?.[material.id];
  const isCut = toCut && !material.free && material.packs.length > 0;
  return isCut
    ? buyByCutting(requirement, material, { toCut, onHand, budget: cutting })
    : buyByAmount(requirement, material, onHand);
}

function* firstThatDoes(
  choices: readonly (readonly Offer[])[],
  buying: Buying,
): InPieces<readonly Offer[] | undefined> {
  for (const open of choices) if (yield* buying(open)) return open;
  return undefined;
}

/**
 * What to buy: each need less the stock on hand, in whole packs at the least price with delivery.
 *
 *     1260 g needed, 200 g in stock, packs of 500 g   ->   3 packs, 440 g left over
 *
 * @param wants  Each with at least one way to be bought (`buyFrom` of its offers).
 */
export function buy(wants: readonly Want[], { program }: Workspace): Bought {
  const from = suppliersToBuyFrom(wants, program);
  const baskets = wants.map((want) => want.buyFrom(from.openTo(want))!);
  return {
    purchases: wants.map((want, i) => purchaseOf(want, baskets[i]!)),
    cutting: baskets.flatMap(({ cut }) => cut?.plan ?? []),
    deliveries: deliveriesOf(
      baskets.flatMap(({ packs }) => packs),
      program,
    ),
  };
}

function purchaseOf({ material, needed }: Want, { packs, fromStock, left, cut }: Basket): Purchase {
  const { unit } = needed;
  const isBought = packs.length > 0 || fromStock.equals(needed.value) || material.free;
  const isPriced = isBought && packs.every(({ offer }) => offer.price);
  return {
    material: material.id,
    needed,
    fromStock: { value: fromStock, unit },
    packs: packs.map(({ offer, count }) => ({ pack: offer.pack, count })),
    ...(isPriced ? { cost: priceOf(packs) } : {}),
    left: { value: left, unit },
    ...(cut ? { leftPieces: cut.left } : {}),
  };
}

/** One for each supplier that anything is bought from, in the order of the program; then those that it lacks. */
function deliveriesOf(choices: readonly Choice[], program: Program): Delivery[] {
  const named = new Set(choices.map(({ offer }) => offer.supplier));
  const known = Object.keys(program.suppliers).filter((id) => named.has(id));
  return [...new Set([...known, ...named])].map((supplier) => {
    const goods = priceOf(choices.filter(({ offer }) => offer.supplier === supplier));
    const charge = chargeFor(supplier, goods, program);
    return { ...(supplier === undefined ? {} : { supplier }), goods, charge };
  });
}
