import type { Workspace } from '../../model/workspace.ts';
import { allocate } from '../../money/money.ts';
import { type Exact, exact, floor, zero } from '../../quantity/exact.ts';
import type { Bought } from '../buy/buy.ts';
import type { Line } from '../demand/line.ts';
import type { Delivery, Purchase, Requirement } from '../result.ts';
import { plus } from './used.ts';

/** What is bought, and for which lines. */
export interface ToShare extends Bought {
  readonly lines: readonly Line[];
  readonly requirements: readonly Requirement[];
  readonly workspace: Workspace;
}

/** Packs and deliveries, as far as prices are known. */
export function outlayOf({ purchases, deliveries }: Pick<Bought, 'purchases' | 'deliveries'>): Exact {
  const packs = purchases.map(({ cost }) => cost ?? zero).reduce(plus, zero);
  return deliveries.map(({ charge }) => charge).reduce(plus, packs);
}

/**
 * What each line bears of the outlay: the packs of a material by how much of it each line uses (which is its used
 * cost, at one price), a delivery by the used cost of the lines. Shares are whole minor units by largest remainder and
 * add up to the outlay.
 *
 * @param used  Used cost of each line.
 */
export function sharedOutlay(work: ToShare, used: readonly Exact[]): readonly Exact[] {
  const { lines, purchases, deliveries, workspace } = work;
  const digits = workspace.program.minorDigits[workspace.program.currency] ?? 2;
  const packs = purchases.map((purchase, i) => split(purchase.cost ?? zero, usualOf(i, work), digits));
  const brought = deliveries.map((delivery) =>
    split(delivery.charge, bringingFor(delivery, work, used), digits),
  );
  return lines.map((_, line) => [...packs, ...brought].reduce((sum, shares) => sum.add(shares[line]!), zero));
}

/** Usual costs, line by line, of what one purchase is for. */
function usualOf(index: number, { lines, requirements }: ToShare): Exact[] {
  const { by } = requirements[index]!;
  return lines.map((_, line) => by.find((share) => share.line === line)?.usual.value ?? zero);
}

/** Lines that use something from this supplier, by their used cost. */
function bringingFor({ supplier }: Delivery, work: ToShare, used: readonly Exact[]): Exact[] {
  const { lines, purchases, requirements, workspace } = work;
  const isFrom = ({ material, packs }: Purchase): boolean =>
    packs.some(({ pack }) => workspace.materials[material]!.packs[pack]!.from === supplier);
  const brought = requirements.filter((_, i) => isFrom(purchases[i]!));
  const isServed = (line: number): boolean =>
    brought.some(({ by }) => by.some((share) => share.line === line));
  return lines.map((_, line) => (isServed(line) ? used[line]! : zero));
}

/** A sum by weight, in whole minor units; what is less than one of them (of an exchange rate) goes to the first. */
function split(total: Exact, weights: readonly Exact[], digits: number): Exact[] {
  const minor = exact(10 ** digits);
  const whole = floor(total.mul(minor));
  const shares = allocate(whole, weights).map((share) => exact(share).div(minor));
  const rest = total.sub(exact(whole).div(minor));
  const bearer = weights.findIndex((weight) => weight.compare(zero) > 0);
  return shares.map((share, line) => (line === Math.max(0, bearer) ? share.add(rest) : share));
}
