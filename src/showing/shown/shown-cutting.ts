import type { Shown } from './shown.ts';

/** How one material is cut, as finished text and as places in millimetres to draw by. */
export interface ShownCutting {
  readonly material: string;
  readonly by: 'sheets' | 'roll' | 'lengths';
  readonly name: Shown;
  /** "2 sheets of 600 mm × 450 mm; 83 % used." */
  readonly says: Shown;
  /** "83 % used", of a roll "83 % of the strip used". */
  readonly used: Shown;
  /** "No plan takes fewer.", or by how much another might. */
  readonly bound: Shown;
  /** It is proven that no cutting plan is less. */
  readonly isLeast: boolean;
  /** Those that are cut alike are one. */
  readonly layouts: readonly ShownLayout[];
}

export interface ShownLayout {
  /** "Sheets 1–3, cut alike". */
  readonly title: Shown;
  /** "3 sheets of 600 mm × 450 mm": how many are cut like this. */
  readonly what: Shown;
  /** "600 mm × 450 mm, from stock". */
  readonly size: Shown;
  /** "4 × Skin, 150 mm × 100 mm; 2 × Base, 300 mm × 100 mm": of one of them. */
  readonly holds: Shown;
  /** "600 mm × 130 mm left whole". Empty where nothing is from which a piece could be cut. */
  readonly left: Shown;
  /** Below the picture on a page: what is left, and before it what a length holds, which has no table there. */
  readonly caption: Shown;
  /** "Size, mm": in what the table counts. */
  readonly sizeHead: Shown;
  /** In order from the lower left corner, by rows. */
  readonly pieces: readonly ShownPiece[];
  readonly drawing: CutDrawing;
}

/**
 * One piece, or the pieces at the same place of several sheets cut alike. Of a length, all that follow each other and
 * are alike.
 */
export interface ShownPiece {
  /** "3", "1–5". */
  readonly number: Shown;
  readonly piece: Shown;
  /** The guide and level; empty in a plan of one line. */
  readonly of: Shown;
  /** "3"; of sheets cut alike "3, 5 and 7", in their order. */
  readonly model: Shown;
  /** As it lies: across, then along. */
  readonly size: Shown;
  /** Empty of lengths: their pieces follow each other. */
  readonly fromLeft: Shown;
  readonly fromBottom: Shown;
}

/** Places in millimetres from the lower left corner, to a tenth. A length lies along the width and is 1 high. */
export interface CutDrawing {
  readonly by: ShownCutting['by'];
  readonly width: number;
  readonly height: number;
  /** What is left whole: a box of its own. Absent where nothing is. */
  readonly left?: Box;
  /** Whether the roll or the length goes on beyond what is drawn. */
  readonly goesOn: boolean;
  /** One for each piece, in their order. */
  readonly boxes: readonly PieceBox[];
  /** What stands at the lower edge, and at the left one. */
  readonly across: readonly Mark[];
  readonly up: readonly Mark[];
}
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export interface PieceBox extends Box {
  readonly number: Shown;
  /** "Skin 150 mm × 100 mm": for pieces that have room for it. */
  readonly name: Shown;
}
export interface Mark {
  readonly at: number;
  readonly label: Shown;
}
