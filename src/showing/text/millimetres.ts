import { type Exact, exact } from '../../core/quantity/exact.ts';
import { roundTo } from '../../core/quantity/round.ts';
import { cuttingWords } from '../../words/cutting.ts';
import { showExactly } from './amounts.ts';
import { fill } from './fill.ts';
import { showNumber } from './numbers.ts';

/** A tenth of a millimetre: finer than any rule is read. */
const tenth = exact('1/10');

/** "1220 mm", "152.4 mm": as a rule reads it. */
export function showMillimetres(length: Exact): string {
  return fill(cuttingWords.millimetres, { n: millimetreNumber(length) });
}

/** How long a rod, tube or tape is: in metres where that is said at once. "920 mm", "6.64 m" */
export function showLengthInMetres(length: Exact): string {
  return length.compare(inMetres) < 0
    ? showMillimetres(length)
    : showExactly({ value: roundTo(length, exact(1)), unit: 'mm' });
}
const inMetres = 2000;

/** "152.4" */
export function millimetreNumber(length: Exact): string {
  return showNumber(roundTo(length, tenth));
}

/** A place to draw at, to a tenth. */
export function place(length: Exact): number {
  return roundTo(length, tenth).valueOf();
}
