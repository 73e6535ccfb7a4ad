import type { Program, Supplier } from '../../model/program.ts';
import { inCurrency } from '../../money/money.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import { type Offer, priceOf } from '../supply/offers.ts';
import type { Want } from './want.ts';

/** The suppliers of a plan. */
export interface Suppliers {
  /** The offers of what is needed that are theirs; all of them where no price is known, since nobody can compare. */
  readonly openTo: (want: Want) => readonly Offer[];
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
  const bought = wants.filter((want) => want.buyFrom(want.offers)!.packs.length > 0);
  const offered = new Set(
    bought.filter(isPriced).flatMap(({ offers }) => offers.map(({ supplier }) => supplier)),
  );
  const charging = Object.keys(program.suppliers).filter((id) => offered.has(id) && isCharging(id, program));
  const openIn = (set: readonly string[], want: Want): readonly Offer[] =>
    isPriced(want) ? want.offers.filter((offer) => isIn(offer, set, charging)) : want.offers;
  let chosen: readonly string[] = charging;
  let least: Exact | undefined;
  for (const set of charging.length > comparedAtMost ? [] : setsOf(charging)) {
    const price = basketPrice(bought, (want) => openIn(set, want), program);
    if (price && (!least || price.compare(least) < 0)) [chosen, least] = [set, price];
  }
  return { openTo: (want) => openIn(chosen, want) };
}

function isPriced({ offers }: Want): boolean {
  return offers[0]?.price !== undefined;
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

function isIn({ supplier }: Offer, set: readonly string[], charging: readonly string[]): boolean {
  return supplier === undefined || !charging.includes(supplier) || set.includes(supplier);
}

/** Price of all that is bought from one set, with delivery; `undefined` where something is not sold in it. */
function basketPrice(
  bought: readonly Want[],
  openTo: Suppliers['openTo'],
  program: Program,
): Exact | undefined {
  const baskets = bought.map((want) => want.buyFrom(openTo(want)));
  const packs = baskets.flatMap((basket) => basket?.packs ?? []);
  const suppliers = [...new Set(packs.map(({ offer }) => offer.supplier))];
  if (baskets.includes(undefined)) return undefined;
  return suppliers.reduce((all, supplier) => {
    const goods = priceOf(packs.filter(({ offer }) => offer.supplier === supplier));
    return all.add(goods).add(chargeFor(supplier, goods, program));
  }, zero);
}

/** What a supplier charges for bringing goods of that price: nothing from `free-over` on. */
export function chargeFor(supplier: string | undefined, goods: Exact, program: Program): Exact {
  const { delivery, freeOver } = termsOf(supplier, program);
  const charge = (delivery && inCurrency(delivery, program)) ?? zero;
  const free = freeOver && inCurrency(freeOver, program);
  return free && goods.compare(free) >= 0 ? zero : charge;
}

/** No: the delivery charge of a supplier is in a currency without a rate. */
export function knowsCharge(supplier: string | undefined, program: Program): boolean {
  const { delivery } = termsOf(supplier, program);
  return !delivery || inCurrency(delivery, program) !== undefined;
}

function termsOf(supplier: string | undefined, { suppliers }: Program): Partial<Supplier> {
  return (supplier === undefined ? undefined : suppliers[supplier]) ?? {};
}
