import type { CutPiece, PlannedLine } from '../../core/plan/result.ts';
import { cuttingWords } from '../../words/cutting.ts';
import { capital, inWords } from '../text/fill.ts';

/** What a guide calls a piece: "Skin"; where it gives no name, "Piece". */
export function pieceName(piece: CutPiece, lines: readonly PlannedLine[]): string {
  return isNamed(piece, lines) ? capital(inWords(piece.piece)) : cuttingWords.unnamed;
}

/** A piece without a name bears that of its material. */
export function isNamed({ line, row, piece }: CutPiece, lines: readonly PlannedLine[]): boolean {
  return piece !== lines[line]?.at.materials[row]?.use;
}
