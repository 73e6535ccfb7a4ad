import type { Holding, Material } from '../../model/material.ts';
import type { Quantity } from '../../model/values.ts';
import { type Reading, refuse } from '../../quantity/problem.ts';
import { isConvertible } from '../../quantity/quantity.ts';
import { readHolding, readQuantity } from '../../quantity/read.ts';
import { packContent } from '../scale/requirements.ts';

/** An amount, nothing included, or whole packs: `240 g`, `0 g`, `2 x 450 mm x 300 mm`. */
export function readOnHand(text: string): Reading<Quantity | Holding> {
  const amount = readQuantity(text);
  return amount.ok ? amount : readPieces(text);
}

/** So many alike: `120 mm x 300 mm`, `3 x 1 m`. */
export function readPieces(text: string): Reading<Holding> {
  const packs = readHolding(text);
  const isBody = packs.ok && 'sides' in packs.value.each && packs.value.each.sides.length !== 2;
  return isBody ? refuse('amount-unreadable.holding', text) : packs;
}

/** The unit in which it counts; of sheets and rolls that of their area. */
export function unitOnHand(found: Quantity | Holding): string {
  if (!('each' in found)) return found.unit;
  return 'sides' in found.each ? 'mm²' : found.each.unit;
}

/** The unit in which a material is sold; `undefined` where it has no pack. */
export function unitSold({ packs }: Material): string | undefined {
  return packs[0] && packContent(packs[0]).unit;
}

/** Whether it is counted as the material is sold, or can be compared with that. */
export function isSold(found: Quantity | Holding, material: Material): boolean {
  const sold = unitSold(material);
  return sold === undefined || isConvertible(unitOnHand(found), sold, material.density !== undefined);
}
