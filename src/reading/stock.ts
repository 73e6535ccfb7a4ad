import type { Diagnostic } from '../core/diagnostic.ts';
import type { Material } from '../core/model/material.ts';
import type { Quantity } from '../core/model/values.ts';
import { nearName } from '../core/near-name.ts';
import type { Measure } from '../core/quantity/quantity.ts';
import { areaOf, measure, quantity, sameDimension, times } from '../core/quantity/quantity.ts';
import { exact } from '../core/quantity/exact.ts';
import { readHolding, readQuantity } from '../core/quantity/read.ts';
import { dimensionOf } from '../core/quantity/units.ts';
import { decode } from './text/decode.ts';
import { limits } from './limits.ts';
import { means, wrong } from './values/plain-words.ts';
import { inReadingOrder, makeReport } from './report.ts';
import { readSheet, type RawMap } from './sheet/sheet.ts';
import { entries, readText, refuse, refuseKey, type TextReader, type Written } from './sheet/written.ts';

/** Stock on hand by material. */
export type Stock = Readonly<Record<string, Quantity>>;

/**
 * A stock file: a map from a material to what is left of it, in YAML or JSON. What a plan leaves over is one.
 *
 *     gelatin-powder: 240 g
 *     felt-3mm: 2 x 450 mm x 300 mm
 *
 * @param file  Its name, for the messages.
 */
export function readStock(
  file: string,
  bytes: Uint8Array,
  materials: Readonly<Record<string, Material>>,
): { readonly stock: Stock } | { readonly refused: readonly Diagnostic[] } {
  const { report, found } = makeReport();
  const source = decode(file, bytes, limits.frontMatterBytes, report);
  const sheet = source && readSheet(source, { text: source.text, offset: 0 }, report);
  const rows = sheet
    ? entries({ value: sheet.values, path: [], file: { sheet, report, refused: false } } as Written<RawMap>)
    : [];
  const stock = rows.flatMap(([id, written]) => {
    const amount = stockOf(id, written, materials);
    return amount ? [[id, amount] as const] : [];
  });
  return found.length > 0 ? { refused: inReadingOrder(found) } : { stock: Object.fromEntries(stock) };
}

function stockOf(
  id: string,
  written: Written,
  materials: Readonly<Record<string, Material>>,
): Quantity | undefined {
  const material = Object.hasOwn(materials, id) ? materials[id] : undefined;
  if (!material) return refuseUnknown(id, written, Object.keys(materials));
  const amount = readText(written, readOnHand);
  const sold = unitSoldIn(material);
  if (!amount || sold === undefined || isComparable(amount.unit, sold, material)) return amount;
  const facts = { material: material.name, unit: amount.unit, sold };
  return refuse(written, { code: 'stock-not-comparable', facts });
}

/** The unit of the first pack; of sheets and rolls that of their area. */
function unitSoldIn({ packs }: Material): string | undefined {
  const each = packs[0]?.holds.each;
  return each && 'sides' in each ? 'mm²' : each?.unit;
}

function refuseUnknown(material: string, written: Written, known: readonly string[]): undefined {
  const near = nearName(material, known);
  const facts = { material, known: known.join(', '), ...(near ? { near } : {}) };
  return refuseKey(written, { code: 'stock-unknown', facts, ...(near ? { variant: 'near' } : {}) });
}

function isComparable(unit: string, sold: string, { density }: Material): boolean {
  const bridged = ['mass', 'volume'];
  const crosses = bridged.includes(dimensionOf(unit)) && bridged.includes(dimensionOf(sold));
  return sameDimension(unit, sold) || (density !== undefined && crosses);
}

/** An amount, nothing included, or whole packs: `240 g`, `0 g`, `2 x 450 mm x 300 mm` (as the area they have). */
const readOnHand: TextReader<Quantity> = (text) => {
  const amount = readQuantity(text);
  if (amount.ok) return amount;
  const packs = readHolding(text);
  if (!packs.ok) return packs;
  const { each } = packs.value;
  if ('sides' in each && each.sides.length !== 2)
    return wrong('amount-unreadable', { text: text.trim() }, 'holding');
  return means(quantity(contentOf(packs.value)));
};

function contentOf({ count, each }: Material['packs'][number]['holds']): Measure {
  return times('sides' in each ? areaOf(each) : measure(each), exact(count));
}
