import type { Guide } from '../core/model/guide.ts';
import type { Material } from '../core/model/material.ts';
import { usualLevel } from '../core/model/plan-at.ts';
import type { Money } from '../core/model/values.ts';
import { inCurrency } from '../core/money/money.ts';
import { readMoney, readWage } from '../core/money/read-money.ts';
import type { OnHand } from '../core/plan/demand.ts';
import {
  readBatch,
  readBuilders,
  readMinutes,
  readTime,
  wholeNumber,
} from '../core/plan/demand/read-option.ts';
import type { OwnPack } from '../core/plan/own/own-settings.ts';
import type { PageData } from '../core/plan/own/page-data.ts';
import { isSold, readOnHand, readPieces } from '../core/plan/supply/read-on-hand.ts';
import { exact, exactText } from '../core/quantity/exact.ts';
import { printHolding, printQuantity } from '../core/quantity/print.ts';
import type { Reading } from '../core/quantity/problem.ts';
import { type SettingText, single, table } from './setting-text.ts';

/** Settings of the whole plan, by their name in an address. */
export const singleSettings: Readonly<Record<string, SettingText>> = {
  batch: single('batch', { read: readBatch, print: String, published: publishedBatch }),
  part: single('part', { read: (text, page) => oneOf(idsOf(guideOf(page).parts), text), print: String }),
  builders: single('builders', {
    read: readBuilders,
    print: String,
    published: ({ workspace }) => workspace.program.builders,
  }),
  start: single('start', { read: readTime, print: String }),
  'ready-by': single('readyBy', { read: readTime, print: String }),
  margin: single('margin', { read: readMinutes, print: (minutes) => `${minutes} min`, published: () => 0 }),
  'good-until': single('goodUntil', { read: readTime, print: String }),
  units: single('units', {
    read: (text) => oneOf(['metric', 'US', 'both'], text),
    print: (units) => units.toLowerCase(),
    published: ({ workspace }) => workspace.program.units,
  }),
  paper: single('paper', {
    read: (text) => oneOf(['A4', 'Letter'], text),
    print: (paper) => paper.toLowerCase(),
    published: ({ workspace }) => workspace.program.paper,
  }),
  labour: single('labour', {
    read: (text, page) => inKnownCurrency(readWage(text), page),
    print: labourText,
    published: ({ workspace }) => workspace.program.labour,
  }),
};

/** Settings of one level, tool or material, by their name in an address. */
export const tableSettings: Readonly<Record<string, SettingText>> = {
  batch: table('along', {
    read: (text, page, id) => (otherLevels(page).includes(id) ? readBatch(text) : undefined),
    print: String,
  }),
  owned: table('owned', {
    read: (text, { workspace }, id) => (Object.hasOwn(workspace.tools, id) ? readOwned(text) : undefined),
    print: String,
    published: ({ workspace }, id) => workspace.program.owned[id],
  }),
  stock: table('stock', {
    read: (text, page, id) => stockIn(text, materialOf(page, id)),
    print: stockText,
  }),
  pack: table('packs', {
    read: (text, page, id) => packsIn(text, materialOf(page, id), page),
    print: (packs) => packsText(packs),
    published: (page, id) => materialOf(page, id)?.packs,
  }),
};

const readOwned = wholeNumber(0, 10_000);
const comma = ', ';

function guideOf({ guide, workspace }: PageData): Guide {
  return workspace.guides[guide]!;
}

function publishedBatch(page: PageData): number {
  return guideOf(page).states?.for ?? 1;
}

function otherLevels(page: PageData): readonly string[] {
  const own = page.level ?? usualLevel(guideOf(page));
  return idsOf(guideOf(page).levels).filter((id) => id !== own);
}

function materialOf({ workspace: { materials } }: PageData, id: string): Material | undefined {
  return Object.hasOwn(materials, id) ? materials[id] : undefined;
}

function idsOf(all: readonly { readonly id: string }[]): readonly string[] {
  return all.map(({ id }) => id);
}

function oneOf<W extends string>(words: readonly W[], text: string): W | undefined {
  return words.find((word) => word.toLowerCase() === text.toLowerCase());
}

/** `240 g`; sheets, offcuts and rods as a list: `450 mm x 300 mm, 2 x 120 mm x 300 mm`. */
function stockIn(text: string, material: Material | undefined): OnHand | undefined {
  if (!material) return undefined;
  const items = text.split(',');
  const readItem = items.length > 1 ? readPieces : readOnHand;
  const found = items.map((item) => sold(readItem(item), material));
  const [first] = found;
  if (!first || found.includes(undefined)) return undefined;
  if (!('each' in first)) return first;
  return { pieces: found.flatMap((item) => (item && 'each' in item ? [item] : [])) };
}

function sold<T extends Parameters<typeof isSold>[0]>(
  reading: Reading<T>,
  material: Material,
): T | undefined {
  return reading.ok && isSold(reading.value, material) ? reading.value : undefined;
}

/** A lone rod has its count with it, which tells it from an amount. */
function stockText(onHand: OnHand): string {
  if (!('pieces' in onHand)) return printQuantity(onHand);
  const [only, ...others] = onHand.pieces.map(printHolding);
  const isAmount = others.length === 0 && only !== undefined && !only.includes(' x ');
  return isAmount ? `1 x ${only}` : onHand.pieces.map(printHolding).join(comma);
}

/** `500 g at 6.40 GBP, 1 kg at 11 GBP`. */
function packsIn(
  text: string,
  material: Material | undefined,
  page: PageData,
): readonly OwnPack[] | undefined {
  const packs = text.split(',').map((item) => material && packIn(item, material, page));
  return packs.every((pack) => pack !== undefined) ? packs : undefined;
}

function packIn(text: string, material: Material, page: PageData): OwnPack | undefined {
  const [, holds = '', sum] = /^(.*?)(?: at (.*))?$/.exec(text)!;
  const holding = sold(readPieces(holds), material);
  const price = sum === undefined ? undefined : inKnownCurrency(readMoney(sum), page);
  if (!holding || !isShapedAs(material, holding) || (sum !== undefined && !price)) return undefined;
  return price ? { holds: holding, price } : { holds: holding };
}

/** Sheets are sold as sheets, rods as rods. */
function isShapedAs({ packs }: Material, { each }: OwnPack['holds']): boolean {
  return packs[0] !== undefined && 'sides' in packs[0].holds.each === 'sides' in each;
}

/**
 * `500 g at 6.4 GBP, 1 kg at 11 GBP`.
 *
 * @param money  As short as an address wants it where left out.
 */
export function packsText(packs: readonly OwnPack[], money: (price: Money) => string = moneyText): string {
  const texts = packs.map(({ holds, price }) =>
    price ? `${printHolding(holds)} at ${money(price)}` : printHolding(holds),
  );
  return texts.join(comma);
}

/** `18 GBP/h`. */
export function labourText(wage: Money): string {
  return `${moneyText(wage)}/h`;
}

function moneyText({ amount, currency }: Money): string {
  return `${exactText(exact(amount))} ${currency}`;
}

/** A sum that can be added to those of the program. */
function inKnownCurrency(reading: Reading<Money>, { workspace }: PageData): Money | undefined {
  return reading.ok && inCurrency(reading.value, workspace.program) ? reading.value : undefined;
}
