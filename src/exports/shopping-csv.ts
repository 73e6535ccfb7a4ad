import type { Pack } from '../core/model/material.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { Delivery, Measure, Plan, Purchase } from '../core/plan/result.ts';
import { exact, exactText, zero } from '../core/quantity/exact.ts';
import { printHolding, printMeasure } from '../core/quantity/print.ts';
import { exportWords } from '../words/exports.ts';
import { type Cell, csvText } from './csv-text.ts';
import { sumText } from './money-text.ts';

const { delivery: deliveryWord, ...header } = exportWords.shopping;
type Row = Readonly<Partial<Record<keyof typeof header, Cell>>>;
const columns = Object.keys(header) as (keyof typeof header)[];

/**
 * The shopping list as a table: a row for each pack of each material, then one for each delivery that costs something.
 * Amounts have their units, counts and prices are bare numbers with the currency beside them. All are exact; where a
 * decimal does not end, it is cut at a thousandth so that there is never too little: a spreadsheet takes 7/2 for a day.
 */
export function shoppingCsv({ purchases, deliveries }: Plan, workspace: Workspace): string {
  const charged = deliveries.filter(({ charge }) => charge.compare(zero) > 0);
  const rows: readonly Row[] = [
    ...purchases.flatMap((purchase) => purchaseRows(purchase, workspace)),
    ...charged.map((delivery) => deliveryRow(delivery, workspace)),
  ];
  return csvText(
    Object.values(header),
    rows.map((row) => columns.map((column) => row[column])),
  );
}

/** What is needed stands in the first row of a material; of what is not bought, in its only one. */
function purchaseRows(purchase: Purchase, workspace: Workspace): Row[] {
  const { material, needed, fromStock, left, packs } = purchase;
  const { name, packs: known, hazards, also } = workspace.materials[material]!;
  const amounts = {
    needed: printMeasure(asDecimal(needed, 'up')),
    fromStock: printMeasure(asDecimal(fromStock, 'down')),
    left: printMeasure(asDecimal(left, 'down')),
  };
  const bought = packs.map(({ pack, count }) => packRow(known[pack]!, count, workspace));
  const rows: readonly Row[] = bought.length > 0 ? bought : [{ packs: 0 }];
  const dangers = [...hazards, ...also].join('; ');
  return rows.map((row, index) => ({ material: name, ...row, dangers, ...(index === 0 ? amounts : {}) }));
}

function asDecimal({ value, unit }: Measure, way: 'up' | 'down'): Measure {
  if (!exactText(value).includes('/')) return { value, unit };
  const thousandths = value.mul(1000);
  return { value: (way === 'up' ? thousandths.ceil() : thousandths.floor()).div(1000), unit };
}

function packRow({ holds, from, code, price }: Pack, count: number, { program }: Workspace): Row {
  return {
    packs: count,
    holds: printHolding(holds),
    supplier: from && (program.suppliers[from]?.name ?? from),
    code,
    ...(price && {
      price: sumText(exact(price.amount), price.currency, program),
      sum: sumText(exact(price.amount).mul(exact(count)), price.currency, program),
      currency: price.currency,
    }),
  };
}

function deliveryRow({ supplier, charge }: Delivery, { program }: Workspace): Row {
  return {
    material: deliveryWord,
    supplier: supplier && (program.suppliers[supplier]?.name ?? supplier),
    sum: sumText(charge, program.currency, program),
    currency: program.currency,
  };
}
