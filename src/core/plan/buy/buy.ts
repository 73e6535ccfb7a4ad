import { Bug } from '../../diagnostic.ts';
import type { Program } from '../../model/program.ts';
import type { Workspace } from '../../model/workspace.ts';
import { buyByCutting } from './buy-by-cutting.ts';
import type { ToCut } from '../cut/cut-pieces.ts';
import type { PlanSettings } from '../demand.ts';
import { chargeFor, suppliersToBuyFrom } from './deliveries.ts';
import { type Choice, offersOf, priceOf } from '../supply/offers.ts';
import type { CuttingPlan, Delivery, Purchase, Requirement } from '../result.ts';
import { type Basket, type Want, answeredOnce, buyByAmount } from './want.ts';

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
 * @throws {Bug} Where a piece fits no pack: `piece-too-large` should have stopped the plan before.
 */
export function wantsOf({ requirements, pieces, workspace, stock, cutting }: ToBuy): readonly Want[] {
  const { program, materials } = workspace;
  return requirements.map((requirement) => {
    const material = materials[requirement.material]!;
    const toCut = pieces.get(material.id);
    const onHand = stock?.[material.id];
    const isCut = toCut && !material.free && material.packs.length > 0;
    const answer = isCut
      ? buyByCutting(requirement, material, { toCut, onHand, budget: cutting })
      : buyByAmount(requirement, material, onHand);
    const buyFrom = answeredOnce(answer);
    const offers = offersOf(material, requirement.amount.unit, program).find((open) => buyFrom(open));
    if (!offers) throw new Bug('a piece that fits no pack', { material: material.id });
    return { material, needed: requirement.amount, offers, buyFrom };
  });
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

/** One for each supplier that anything is bought from, in the order of the program. */
function deliveriesOf(choices: readonly Choice[], program: Program): Delivery[] {
  const known = Object.keys(program.suppliers);
  const named = [...new Set(choices.map(({ offer }) => offer.supplier))];
  const order = (id: string | undefined): number =>
    id !== undefined && known.includes(id) ? known.indexOf(id) : known.length;
  return named
    .sort((a, b) => order(a) - order(b))
    .map((supplier) => {
      const goods = priceOf(choices.filter(({ offer }) => offer.supplier === supplier));
      const charge = chargeFor(supplier, goods, program);
      return { ...(supplier === undefined ? {} : { supplier }), goods, charge };
    });
}
