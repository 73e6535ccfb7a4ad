import type { CutPiece } from '../core/plan/result.ts';
import { capital, inWords } from './fill.ts';

/** What a guide calls a piece: "Skin". */
export function pieceName({ piece }: CutPiece): string {
  return capital(inWords(piece));
}
