import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './lookup/context.ts';
import { sizeOfPiece } from './lookup/row-keys.ts';

/** Pieces of one row that are lengths here and areas there, and bodies, which are not cut from anything. */
export const piecesMixed: Check = {
  code: 'pieces-mixed',
  gravity: 'stops',
  find: ({ guidesAt }) => guidesAt.flatMap((read) => read.at.materials.flatMap((_, row) => ofRow(read, row))),
};

function ofRow(read: GuideAtLevel, row: number): readonly Finding[] {
  const { pieces } = read.at.materials[row]!;
  const placeOf = (piece: number) => sizeOfPiece(read, row, piece).place;
  const bodies = pieces.flatMap(({ id, size }, i): readonly Finding[] =>
    size.sides.length > 2 ? [{ variant: 'body', places: [placeOf(i)], facts: { piece: id } }] : [],
  );
  const [first] = pieces;
  const odd = pieces.findIndex(({ size }) => size.sides.length !== first!.size.sides.length);
  if (bodies.length > 0 || odd < 0) return bodies;
  return [{ places: [placeOf(odd), placeOf(0)], facts: { piece: pieces[odd]!.id, first: first!.id } }];
}
