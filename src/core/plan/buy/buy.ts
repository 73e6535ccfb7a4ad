import type { Program } from '../model/program.ts';
import type { Workspace } from '../model/workspace.ts';
import { type Exact, ceil, exact, zero } from '../quantity/exact.ts';
import { measure } from '../quantity/quantity.ts';
import { leastCostPacks } from '../solve/packs/least-cost-packs.ts';
import type { PlanSettings } from './demand.ts';
import { chargeFor, suppliersToBuyFrom } from './deliveries.ts';
import { type Offer, type Want, wantOf } from './offers.ts';
import type { Delivery, Purchase, Requirement } from './result.ts';

/** Whole packs, and who brings them. */
export interface Bought {
  /** One for each requirement, in its order. */
  readonly purchases: readonly Purchase[];
  readonly deliveries: readonly Delivery[];
}

/**
 * What to buy: each need less the stock on hand, in whole packs at the least price with delivery.
 *
 *     1260 g needed, 200 g in stock, packs of 500 g   ->   3 packs, 440 g left over
 *
 * @param byArea  Materials that are cut into pieces: bought by area or length.
 */
export function buy(
  requirements: readonly Requirement[],
  workspace: Workspace,
  stock: PlanSettings['stock'],
  byArea: ReadonlySet<string>,
): Bought {
  const { program, materials } = workspace;
  const wants = requirements.map((requirement) => {
    const onHand = stock?.[requirement.material];
    return wantOf(requirement, materials[requirement.material]!, onHand && measure(onHand), program);
  });
  const from = suppliersToBuyFrom(wants, program);
  const choices = wants.map((want) => packsFor(want, (offer) => from.sellsFrom(offer)));
  return {
    purchases: wants.map((want, i) => purchaseOf(want, choices[i]!, byArea.has(want.material.id))),
    deliveries: deliveriesOf(choices.flat(), program),
  };
}

/** So many of one pack. */
interface Choice {
  readonly offer: Offer;
  readonly count: number;
}

/** The cheapest whole packs among some suppliers; where no price is known, as many as needed of the usual pack. */
function packsFor({ toBuy, offers }: Want, isOpen: (offer: Offer) => boolean): readonly Choice[] {
  const [usual] = offers;
  if (!usual || toBuy.equals(zero)) return [];
  if (!usual.price) return [{ offer: usual, count: ceil(toBuy.div(usual.holds)) }];
  const open = offers.filter(isOpen);
  const { counts } = leastCostPacks(
    toBuy,
    open.map(({ holds, price }) => ({ holds, price: price! })),
  );
  return open.map((offer, i) => ({ offer, count: counts[i]! })).filter(({ count }) => count > 0);
}

function purchaseOf(want: Want, choice: readonly Choice[], byArea: boolean): Purchase {
  const { material, unit, needed, inStock, toBuy } = want;
  const bought = sum(choice, ({ holds }) => holds);
  const fromStock = inStock.compare(needed) < 0 ? inStock : needed;
  const left = material.free ? zero : inStock.add(bought).sub(needed);
  const isPriced = toBuy.equals(zero) || (choice.length > 0 && choice.every(({ offer }) => offer.price));
  return {
    material: material.id,
    needed: { value: needed, unit },
    fromStock: { value: fromStock, unit },
    packs: choice.map(({ offer, count }) => ({ pack: offer.pack, count })),
    ...(isPriced ? { cost: priceOf(choice) } : {}),
    left: { value: left.compare(zero) < 0 ? zero : left, unit },
    byArea,
  };
}

function sum(choice: readonly Choice[], of: (offer: Offer) => Exact): Exact {
  return choice.reduce((all, { offer, count }) => all.add(of(offer).mul(exact(count))), zero);
}

/** As far as prices are known. */
function priceOf(choice: readonly Choice[]): Exact {
  return sum(choice, ({ price }) => price ?? zero);
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
