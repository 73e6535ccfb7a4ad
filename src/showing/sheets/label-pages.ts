import type { LabelStock } from '../../core/model/label-stock.ts';
import { exact } from '../../core/quantity/exact.ts';
import { sheetWords } from '../../words/sheets.ts';
import { fill } from '../text/fill.ts';
import { millimetreNumber } from '../text/millimetres.ts';
import { showCount } from '../text/numbers.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type { ShownLabel, ShownLabels } from '../shown/shown-sheets.ts';

/** Labels as they lie on one sheet. */
export interface LabelPage {
  readonly name: Shown;
  readonly labels: readonly ShownLabel[];
}

/** The labels of a batch, sheet by sheet. */
export function labelPages({ models }: ShownLabels, { across, down }: LabelStock): readonly LabelPage[] {
  const onOne = across * down;
  return Array.from({ length: Math.ceil(models.length / onOne) }, (_, i) => ({
    name: shown(`labels.pages[${i}]`, fill(sheetWords.labels.sheet, { n: showCount(i + 1) })),
    labels: models.slice(i * onOne, (i + 1) * onOne),
  }));
}

/** A sheet of labels as one chooses it: its name, and how many labels it has (for the browser). */
export function showChoice(stock: LabelStock): {
  readonly id: string;
  readonly name: string;
  readonly count: string;
} {
  return { id: stock.id, name: showStock(stock), count: String(stock.across * stock.down) };
}

/** "3 × 7 of 63.5 × 38.1 mm on A4" */
function showStock({ across, down, width, height, paper }: LabelStock): string {
  return fill(sheetWords.labels.stockSay, {
    across: showCount(across),
    down: showCount(down),
    width: millimetreNumber(exact(String(width))),
    height: millimetreNumber(exact(String(height))),
    paper,
  });
}
