import type { Diagnostic } from '../core/diagnostic.ts';
import type { Holding, Material } from '../core/model/material.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { nearName } from '../core/near-name.ts';
import type { Finished, OnHand } from '../core/plan/demand.ts';
import { sameDimension } from '../core/quantity/quantity.ts';
import { readHolding, readQuantity } from '../core/quantity/read.ts';
import { dimensionOf } from '../core/quantity/units.ts';
import { readFinished } from './finished.ts';
import { decode } from './text/decode.ts';
import { limits } from './limits.ts';
import { means, wrong } from './values/plain-words.ts';
import { inReadingOrder, makeReport } from './report.ts';
import { readSheet, type RawList, type RawMap } from './sheet/sheet.ts';
import {
  entries,
  items,
  readText,
  refuse,
  refuseKey,
  type TextReader,
  type Written,
} from './sheet/written.ts';

/** Stock on hand by material. */
export type Stock = Readonly<Record<string, OnHand>>;

/** What a stock file says. */
export interface StockRead {
  readonly stock: Stock;
  readonly finished: readonly Finished[];
}

/**
 * A stock file: a map from a material to what is left of it, in YAML or JSON, and the models that are finished or on
 * their way. What a plan leaves over is one.
 *
 *     gelatin-powder: 240 g
 *     felt-3mm: [2 x 450 mm x 300 mm, 120 mm x 300 mm]
 *     models:
 *       - { guide: needle-block, level: deep, count: 3, past: { pour: 4 } }
 *
 * @param file  Its name, for the messages.
 */
export function readStock(
  file: string,
  bytes: Uint8Array,
  workspace: Pick<Workspace, 'materials' | 'guides'>,
): StockRead | { readonly refused: readonly Diagnostic[] } {
  const { report, found } = makeReport();
  const source = decode(file, bytes, limits.frontMatterBytes, report);
  const sheet = source && readSheet(source, { text: source.text, offset: 0 }, report);
  const rows = sheet
    ? entries({ value: sheet.values, path: [], file: { sheet, report, refused: false } } as Written<RawMap>)
    : [];
  const stock = rows.flatMap(([id, written]) => {
    const onHand = id === ofModels ? undefined : stockOf(id, written, workspace.materials);
    return onHand ? [[id, onHand] as const] : [];
  });
  const finished = rows.flatMap(([id, written]) =>
    id === ofModels ? readFinished(written, workspace.guides) : [],
  );
  return found.length > 0
    ? { refused: inReadingOrder(found) }
    : { stock: Object.fromEntries(stock), finished };
}
const ofModels = 'models';

function stockOf(
  id: string,
  written: Written,
  materials: Readonly<Record<string, Material>>,
): OnHand | undefined {
  const material = Object.hasOwn(materials, id) ? materials[id] : undefined;
  if (!material) return refuseUnknown(id, written, Object.keys(materials));
  if (Array.isArray(written.value)) {
    const pieces = items(written as Written<RawList>).flatMap((item) => holdingsOf(item, material) ?? []);
    return { pieces };
  }
  const amount = readText(written, readOnHand);
  if (!amount || !isSold(written, amount, material)) return undefined;
  return 'value' in amount ? amount : { pieces: [amount] };
}

function holdingsOf(written: Written, material: Material): Holding | undefined {
  const holding = readText(written, readPieces);
  return holding && isSold(written, holding, material) ? holding : undefined;
}

/** Whether it is counted as the material is sold, or can be compared with that; reported where it cannot. */
function isSold(written: Written, found: Amount | Holding, material: Material): boolean {
  const unit = 'each' in found ? unitOf(found) : found.unit;
  const sold = material.packs[0] && unitOf(material.packs[0].holds);
  if (sold === undefined || isComparable(unit, sold, material)) return true;
  refuse(written, { code: 'stock-not-comparable', facts: { material: material.name, unit, sold } });
  return false;
}
type Amount = Extract<OnHand, { unit: string }>;

/** The unit in which it counts; of sheets and rolls that of their area. */
function unitOf({ each }: Holding): string {
  return 'sides' in each ? 'mm²' : each.unit;
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

/** An amount, nothing included, or whole packs: `240 g`, `0 g`, `2 x 450 mm x 300 mm`. */
const readOnHand: TextReader<Amount | Holding> = (text) => {
  const amount = readQuantity(text);
  return amount.ok ? amount : readPieces(text);
};

/** So many alike: `120 mm x 300 mm`, `3 x 1 m`. */
const readPieces: TextReader<Holding> = (text) => {
  const packs = readHolding(text);
  if (!packs.ok) return packs;
  const { each } = packs.value;
  if ('sides' in each && each.sides.length !== 2)
    return wrong('amount-unreadable', { text: text.trim() }, 'holding');
  return means(packs.value);
};
