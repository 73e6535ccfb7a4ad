import { sheetsAtLeast } from './sheets-at-least.ts';
import type { PieceKind } from './pieces.ts';
import { fits, type Stock } from './stock.ts';

/** What any choice of sheets must come to: of these kinds of them, together so much area and so many. */
export interface Need {
  readonly kinds: readonly number[];
  readonly area: number;
  readonly sheets: number;
}

/**
 * Necessary conditions, one for each set of sheet kinds that some pieces are confined to, and one for all.
 *
 * @param all  Each fits at least one of the stock.
 */
export function needsOf(all: readonly PieceKind[], stock: readonly Stock[]): Need[] {
  const pieces = all.filter(({ count }) => count > 0);
  const homes = pieces.map((piece) => stock.flatMap((sheet, kind) => (fits(piece, sheet) ? [kind] : [])));
  const sets = new Map([stock.map((_, kind) => kind), ...homes].map((kinds) => [String(kinds), kinds]));
  return [...sets.values()].map((kinds) => {
    const inside = pieces.filter((_, piece) => homes[piece]!.every((kind) => kinds.includes(kind)));
    const width = Math.max(...kinds.map((kind) => stock[kind]!.width));
    const height = Math.max(...kinds.map((kind) => stock[kind]!.height));
    const area = inside.reduce((sum, piece) => sum + piece.width * piece.height * piece.count, 0);
    return { kinds, area, sheets: sheetsAtLeast(inside, { width, height }) };
  });
}

/** Whether so many of each kind meet every need. They may still not hold the pieces. */
export function meetsNeeds(
  counts: readonly number[],
  needs: readonly Need[],
  stock: readonly Stock[],
): boolean {
  return needs.every(({ kinds, area, sheets }) => {
    const sum = (of: (kind: number) => number): number =>
      kinds.reduce((all, kind) => all + counts[kind]! * of(kind), 0);
    return sum(() => 1) >= sheets && sum((kind) => stock[kind]!.width * stock[kind]!.height) >= area;
  });
}
