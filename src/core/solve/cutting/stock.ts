import type { InPieces } from '../../in-pieces.ts';
import type { Layout } from './lay-out.ts';
import { areaOf, type Blank, type PieceKind } from './pieces.ts';

/**
 * Sheets or rods of one size to cut from, as the search sees them: grown by the gap, a rod one unit wide; without what
 * no pieces side by side come to.
 */
export interface Stock extends Size {
  /** The whole sheet, its width without the gap: for its offcut. */
  readonly full: Size;
  /** What one counts for: its price, else its area. */
  readonly value: number;
  /** How many there are; Infinity where as many as one likes. */
  readonly count: number;
}

/** One sheet or rod, and what is cut from it. */
export interface Filled {
  /** Index into the stock. */
  readonly kind: number;
  readonly layout: Layout;
}

/** Lays what it can of the blanks, in about their order, on one sheet or rod. */
export type Lay = (order: readonly Blank[], width: number, height: number) => Layout;

/** A sheet to lay on, with the index of its kind. */
export type Sheet = Stock & { readonly kind: number };

/** Work that may still be done, counted in pieces laid. */
export interface Work {
  left: number;
}

/** All pieces laid on some sheets; or: there is provably no way; or none was found. */
export type FilledOrNot = readonly Filled[] | 'none' | 'unknown';

export type Fill = (
  pieces: readonly PieceKind[],
  sheets: readonly Sheet[],
  work: Work,
) => InPieces<FilledOrNot>;

/** Whether the piece fits the sheet one way or the other. */
export function fits({ width, height, turn }: Omit<PieceKind, 'count'>, sheet: Size): boolean {
  return (
    (width <= sheet.width && height <= sheet.height) ||
    (turn && height <= sheet.width && width <= sheet.height)
  );
}
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** What so many filled sheets weigh together. */
export function sumOver(filled: readonly Filled[], weights: readonly number[]): number {
  return filled.reduce((sum, { kind }) => sum + weights[kind]!, 0);
}

/** What so many of each kind weigh together. */
export function weigh(counts: readonly number[], weights: readonly number[]): number {
  return counts.reduce((sum, count, kind) => sum + count * weights[kind]!, 0);
}

export function sheetsOf(counts: readonly number[], stock: readonly Stock[]): Sheet[] {
  return counts.flatMap((count, kind) => Array.from({ length: count }, () => ({ ...stock[kind]!, kind })));
}

/** Whether there is no way to lay the pieces, for one of them or for all together. */
export function areTooLarge(pieces: readonly PieceKind[], sheets: readonly Size[]): boolean {
  const asked = pieces.filter(({ count }) => count > 0);
  const area = asked.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
  return areaOf(sheets) < area || !asked.every((piece) => sheets.some((sheet) => fits(piece, sheet)));
}
