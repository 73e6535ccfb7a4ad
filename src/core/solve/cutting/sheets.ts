import { Bug } from '../../diagnostic.ts';
import { type InPieces, atOnce } from '../../in-pieces.ts';
import { cuttingStock } from './cut-stock.ts';
import { fillingSheets } from './fill-sheets.ts';
import { layOut } from './lay-out.ts';
import { grown, type PieceKind, type Placement } from './pieces.ts';
import { fits } from './stock.ts';

/** Sheets of one size. All sizes are whole numbers of one unit. */
export interface SheetKind {
  readonly width: number;
  readonly height: number;
  /** Whole, zero or more: minor units of money. It counts only where every sheet has one. */
  readonly price?: number;
  /** How many there are; as many as one likes where left out. */
  readonly count?: number;
}

export interface SheetProblem {
  /** At least one kind. Offcuts at hand are sheets with a count and a price of 0. */
  readonly sheets: readonly SheetKind[];
  /** Each fits at least one kind of sheet. */
  readonly pieces: readonly PieceKind[];
  /** Between pieces, not at edges; 0 where left out. */
  readonly gap?: number;
  /** How many pieces may be laid in search of a better plan; 60,000 where left out. Work, never seconds. */
  readonly budget?: number;
}

export interface SheetLayouts {
  /** In the order in which they are cut: the one with the largest offcut last. `sheet` is the index of its kind. */
  readonly sheets: readonly {
    readonly sheet: number;
    /** Height from the lower edge that is used; what lies above it stays whole. */
    readonly used: number;
    readonly placements: readonly Placement[];
  }[];
  /** Price of all sheets where every sheet has one, else their area. */
  readonly value: number;
  /** No plan has a smaller value. */
  readonly bound: number;
  /** No plan takes fewer sheets. */
  readonly fewest: number;
  /** How many of each piece found no room: all 0 unless every kind of sheet has a count. */
  readonly left: readonly number[];
}

/**
 * Rectangles cut from whole sheets at the least price; where some sheet has no price, from the least area. Then from
 * the fewest sheets, then so that one sheet keeps the largest offcut: its full width above what is used.
 *
 * @throws {Bug} Where a piece fits no sheet: see `fitsNone`.
 */
export function cutSheets(problem: SheetProblem): SheetLayouts {
  return atOnce(cuttingSheets(problem));
}

/** The same, in small pieces of work. */
export function* cuttingSheets({
  sheets,
  pieces,
  gap = 0,
  budget = 60_000,
}: SheetProblem): InPieces<SheetLayouts> {
  const tooLarge = fitsNone(sheets, pieces);
  if (tooLarge.length > 0) throw new Bug('pieces larger than every sheet', { tooLarge });
  const { filled, ...rest } = yield* cuttingStock({
    pieces: grown(pieces, gap),
    sizes: sheets.map(({ width, height, price, count }) => ({
      width: width + gap,
      height: height + gap,
      across: width,
      amount: width * height,
      price,
      count,
    })),
    lay: layOut,
    fill: fillingSheets,
    budget,
  });
  const cut = filled.map(({ kind, layout: { top, placements } }) => ({
    sheet: kind,
    used: top - gap,
    placements,
  }));
  return { sheets: cut, ...rest };
}

/** Indexes of the pieces that fit no sheet, however they are turned. */
export function fitsNone(sheets: readonly SheetKind[], pieces: readonly PieceKind[]): number[] {
  return pieces.flatMap((piece, index) =>
    piece.count > 0 && !sheets.some((sheet) => fits(piece, sheet)) ? [index] : [],
  );
}
