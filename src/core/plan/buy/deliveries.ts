import type { Program } from '../model/program.ts';
import { inCurrency } from '../money/money.ts';
import { type Exact, zero } from '../quantity/exact.ts';
import { leastCostPacks } from '../solve/packs/least-cost-packs.ts';
import type { Offer, Want } from './offers.ts';

/** The suppliers of a plan. */
export interface Suppliers {
  readonly sellsFrom: (offer: Offer) => boolean;
}

/** Above so many suppliers that charge for delivery, sets of them are not compared: packs alone decide. */
const comparedAtMost = 8;

/**
 * The set of suppliers from whom everything costs least with delivery: exact over all sets. Within a set each material
 * is bought at the least price of its packs; buying more to have delivery free is not tried.
 *
 *     felt 4.00 and tape 1.00 at A (delivery 5.00), tape 0.80 at B (delivery 5.00)   ->   all from A
 *
 * Ties: fewest suppliers, then those listed first. Who charges nothing for delivery is always in the set.
 */
export function suppliersToBuyFrom(wants: readonly Want[], program: Program): Suppliers {
  const bought = wants.filter(({ toBuy, offers }) => toBuy.compare(zero) > 0 && offers[0]?.price);
  const charging = Object.keys(program.suppliers).filter(
    (id) =>
      isCharging(id, program) && bought.some(({ offers }) => offers.some(({ supplier }) => supplier === id)),
  );
  const sets = charging.length > comparedAtMost ? [charging] : setsOf(charging);
  const priceIn = basketPrices(bought, charging, program);
  let best: { readonly set: readonly string[]; readonly price: Exact } | undefined;
  for (const set of sets) {
    const price = priceIn(set);
    if (price && (!best || price.compare(best.price) < 0)) best = { set, price };
  }
  return { sellsFrom: ({ supplier }) => isIn(supplier, best?.set ?? charging, charging) };
}

function isCharging(id: string, program: Program): boolean {
  const charge = program.suppliers[id]!.delivery;
  return charge !== undefined && inCurrency(charge, program)?.compare(zero) !== 0;
}

/** All sets, smallest first, else in the order listed. */
function setsOf(ids: readonly string[]): readonly (readonly string[])[] {
  const sets = ids.reduce<readonly (readonly string[])[]>(
    (all, id) => [...all, ...all.map((set) => [...set, id])],
    [[]],
  );
  return [...sets].sort((a, b) => a.length - b.length);
}

function isIn(supplier: string | undefined, set: readonly string[], charging: readonly string[]): boolean {
  return supplier === undefined || !charging.includes(supplier) || set.includes(supplier);
}

/** Price of all that is bought from one set, with delivery; `undefined` where something is not sold in it. */
function basketPrices(
  bought: readonly Want[],
  charging: readonly string[],
  program: Program,
): (set: readonly string[]) => Exact | undefined {
  const known = bought.map(() => new Map<string, ReadonlyMap<string, Exact>>());
  const goodsOf = (
    want: Want,
    index: number,
    set: readonly string[],
  ): ReadonlyMap<string, Exact> | undefined => {
    const open = want.offers.filter(({ supplier }) => isIn(supplier, set, charging));
    const key = open.map(({ pack }) => pack).join();
    if (open.length === 0) return undefined;
    if (!known[index]!.has(key)) known[index]!.set(key, goodsBySupplier(want, open));
    return known[index]!.get(key);
  };
  return (set) => {
    const goods = bought.map((want, index) => goodsOf(want, index, set));
    return goods.every((each) => each !== undefined) ? withDelivery(goods, program) : undefined;
  };
}

/** What the cheapest packs of one material cost, by supplier (`''` where nobody is named). */
function goodsBySupplier(want: Want, open: readonly Offer[]): ReadonlyMap<string, Exact> {
  const { counts } = leastCostPacks(
    want.toBuy,
    open.map(({ holds, price }) => ({ holds, price: price! })),
  );
  const goods = new Map<string, Exact>();
  open.forEach(({ supplier = '', price }, i) => {
    if (counts[i]! > 0) goods.set(supplier, (goods.get(supplier) ?? zero).add(price!.mul(counts[i]!)));
  });
  return goods;
}

function withDelivery(goods: readonly ReadonlyMap<string, Exact>[], program: Program): Exact {
  const suppliers = [...new Set(goods.flatMap((each) => [...each.keys()]))];
  return suppliers.reduce((all, id) => {
    const sum = goods.reduce((sum, each) => sum.add(each.get(id) ?? zero), zero);
    return all.add(sum).add(chargeFor(id, sum, program));
  }, zero);
}

/** What a supplier charges for bringing goods of that price: nothing from `free-over` on. */
export function chargeFor(supplier: string | undefined, goods: Exact, program: Program): Exact {
  const { delivery, freeOver } = (supplier !== undefined && program.suppliers[supplier]) || {};
  const charge = (delivery && inCurrency(delivery, program)) ?? zero;
  const free = freeOver && inCurrency(freeOver, program);
  return free && goods.compare(free) >= 0 ? zero : charge;
}

/** No: the delivery charge of a supplier is in a currency without a rate. */
export function knowsCharge(supplier: string | undefined, program: Program): boolean {
  const charge = supplier === undefined ? undefined : program.suppliers[supplier]?.delivery;
  return !charge || inCurrency(charge, program) !== undefined;
}
