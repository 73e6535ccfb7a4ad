import { askedList, askedObject, askedWhole, askedWholeOrNone, askedYesNo } from './core/solve/asked.ts';
import * as lengths from './core/solve/cutting/lengths.ts';
import * as sheets from './core/solve/cutting/sheets.ts';
import * as strip from './core/solve/cutting/strip.ts';
import type { LengthProblem, RodCuts } from './core/solve/cutting/lengths.ts';
import type { SheetLayouts, SheetProblem } from './core/solve/cutting/sheets.ts';
import type { StripLayout, StripProblem } from './core/solve/cutting/strip.ts';

export type { LengthKind, LengthProblem, RodCuts, RodKind } from './core/solve/cutting/lengths.ts';
export type { PieceKind, Placement } from './core/solve/cutting/pieces.ts';
export type { SheetKind, SheetLayouts, SheetProblem } from './core/solve/cutting/sheets.ts';
export type { StripLayout, StripProblem } from './core/solve/cutting/strip.ts';

/**
 * Rectangles cut from whole sheets at the least price; where some sheet has no price, from the least area. Then from
 * the fewest sheets, then so that one sheet keeps the largest offcut. Layouts are free: not every one can be cut with
 * straight cuts from edge to edge. The same question has the same answer, on every machine.
 *
 * ```js
 * import { cutSheets } from 'benchwright/cutting';
 *
 * const { sheets, value, bound } = cutSheets({
 *   sheets: [
 *     { width: 600, height: 400, price: 450 },
 *     { width: 300, height: 200, price: 0, count: 1 }, // an offcut at hand
 *   ],
 *   pieces: [{ width: 150, height: 100, count: 18, turn: true }],
 *   gap: 2, // what the blade takes between two pieces
 * });
 * // value 900 and bound 900: two sheets, and no plan is cheaper
 * ```
 *
 * @param problem  Whole numbers of one unit; prices in whole minor units.
 * @throws {TypeError} Where something is of the wrong kind, and {RangeError} where a number is out of range or a piece
 *         fits no sheet. The message says which.
 */
export function cutSheets(problem: SheetProblem): SheetLayouts {
  const { sheets: kinds, pieces } = askedObject('the problem', problem);
  askedList('sheets', kinds, 1).forEach((kind, at) => askSheet(`sheets[${at}]`, kind, ['width', 'height']));
  askPieces(pieces, ['width', 'height']);
  askSettings(problem);
  refuseHuge(problem.pieces, problem.gap);
  refuseTooLarge(sheets.fitsNone(problem.sheets, problem.pieces), 'fits no sheet');
  return sheets.cutSheets(problem);
}

/**
 * Lengths cut from whole rods, tubes or cord at the least price; where some kind has no price, from the least length.
 * Then from the fewest, then so that one keeps the longest offcut.
 *
 * ```js
 * import { cutLengths } from 'benchwright/cutting';
 *
 * const { rods, fewest } = cutLengths({
 *   stock: [{ length: 2000 }],
 *   pieces: [{ length: 650, count: 6 }, { length: 300, count: 4 }],
 *   gap: 3, // what the saw takes between two pieces
 * });
 * // rods[0].pieces: [{ piece: 0, at: 0 }, { piece: 0, at: 653 }, { piece: 0, at: 1306 }]
 * ```
 *
 * @param problem  Whole numbers of one unit; prices in whole minor units.
 * @throws {TypeError} Where something is of the wrong kind, and {RangeError} where a number is out of range or a piece
 *         is longer than every rod. The message says which.
 */
export function cutLengths(problem: LengthProblem): RodCuts {
  const { stock, pieces } = askedObject('the problem', problem);
  askedList('stock', stock, 1).forEach((kind, at) => askSheet(`stock[${at}]`, kind, ['length']));
  askPieces(pieces, ['length']);
  askSettings(problem);
  refuseTooLarge(lengths.longerThanAll(problem.stock, problem.pieces), 'is longer than every rod');
  return lengths.cutLengths(problem);
}

/**
 * Rectangles laid on a strip of fixed width, as from a roll, so that they take little of its length.
 *
 * ```js
 * import { cutStrip } from 'benchwright/cutting';
 *
 * const { length, bound, placements } = cutStrip({
 *   width: 450,
 *   pieces: [{ width: 150, height: 100, count: 7, turn: false }],
 * });
 * // length 300: three rows of three, and one on its own
 * ```
 *
 * @param problem  Whole numbers of one unit.
 * @throws {TypeError} Where something is of the wrong kind, and {RangeError} where a number is out of range or a piece
 *         is wider than the strip. The message says which.
 */
export function cutStrip(problem: StripProblem): StripLayout {
  const { width, pieces } = askedObject('the problem', problem);
  askedWhole('width', width, 1);
  askPieces(pieces, ['width', 'height']);
  askSettings(problem);
  refuseHuge(problem.pieces, problem.gap);
  const tooWide = sheets.fitsNone([{ width: problem.width, height: Infinity }], problem.pieces);
  refuseTooLarge(tooWide, 'is wider than the strip');
  return strip.cutStrip(problem);
}

function askSheet(name: string, kind: unknown, sides: readonly string[]): void {
  const sheet = askedObject(name, kind);
  for (const side of sides) askedWhole(`${name}.${side}`, sheet[side], 1);
  askedWholeOrNone(`${name}.price`, sheet.price, 0);
  askedWholeOrNone(`${name}.count`, sheet.count, 0);
}

/** Each piece is laid by itself: more than so many would take too long. */
const piecesUpTo = 10_000;

function askPieces(pieces: unknown, sides: readonly string[]): void {
  const counts = askedList('pieces', pieces).map((kind, at) => {
    const piece = askedObject(`pieces[${at}]`, kind);
    for (const side of sides) askedWhole(`pieces[${at}].${side}`, piece[side], 1);
    if (sides.length === 2) askedYesNo(`pieces[${at}].turn`, piece.turn);
    return askedWhole(`pieces[${at}].count`, piece.count, 0, piecesUpTo);
  });
  const all = counts.reduce((sum, count) => sum + count, 0);
  if (all > piecesUpTo)
    throw new RangeError(`There are ${all} pieces, and at most ${piecesUpTo} are laid at once.`);
}

function askSettings({ gap, budget }: { readonly gap?: unknown; readonly budget?: unknown }): void {
  askedWholeOrNone('gap', gap, 0);
  askedWholeOrNone('budget', budget, 0);
}

/** Areas are added in whole numbers, which end somewhere. */
function refuseHuge(pieces: SheetProblem['pieces'], gap = 0): void {
  const area = pieces.reduce(
    (sum, { width, height, count }) => sum + (width + gap) * (height + gap) * count,
    0,
  );
  if (area > Number.MAX_SAFE_INTEGER)
    throw new RangeError(`The area of all pieces, ${area}, is too large to be exact: use a coarser unit.`);
}

function refuseTooLarge(pieces: readonly number[], why: string): void {
  if (pieces.length > 0) throw new RangeError(`pieces[${pieces[0]}] ${why}.`);
}
