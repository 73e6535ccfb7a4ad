import type { Diagnostic } from '../core/diagnostic.ts';
import type { Holding, Material } from '../core/model/material.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { nearName } from '../core/near-name.ts';
import type { Finished, OnHand } from '../core/plan/demand.ts';
import {
  isSold as isComparable,
  readOnHand,
  readPieces,
  unitOnHand,
  unitSold,
} from '../core/plan/supply/read-on-hand.ts';
import { readFinished } from './finished.ts';
import { decode } from './text/decode.ts';
import { limits } from './limits.ts';
import { inReadingOrder, makeReport } from './report.ts';
import { readSheet } from './sheet/read-sheet.ts';
import type { RawList, RawMap } from './sheet/sheet.ts';
import { entries, items, readText, refuse, refuseKey, type Written } from './sheet/written.ts';

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
  if (!amount || isNothing(amount) || !isSold(written, amount, material)) return undefined;
  return 'value' in amount ? amount : { pieces: [amount] };
}

/** A bare 0 is none of it, in whatever unit it is sold. */
const isNothing = (found: Amount | Holding): boolean =>
  'unit' in found && found.unit === '' && found.value === '0';

function holdingsOf(written: Written, material: Material): Holding | undefined {
  const holding = readText(written, readPieces);
  return holding && isSold(written, holding, material) ? holding : undefined;
}

/** Whether it can be compared with what is sold; reported where it cannot. */
function isSold(written: Written, found: Amount | Holding, material: Material): boolean {
  if (isComparable(found, material)) return true;
  const facts = { material: material.name, unit: unitOnHand(found), sold: unitSold(material)! };
  refuse(written, { code: 'stock-not-comparable', facts });
  return false;
}
type Amount = Extract<OnHand, { unit: string }>;

function refuseUnknown(material: string, written: Written, known: readonly string[]): undefined {
  const near = nearName(material, known);
  const facts = { material, known: known.join(', '), ...(near ? { near } : {}) };
  return refuseKey(written, { code: 'stock-unknown', facts, ...(near ? { variant: 'near' } : {}) });
}
