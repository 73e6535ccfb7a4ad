import type { PieceKind } from './pieces.ts';
import type { Size } from './stock.ts';

/**
 * The sheet without what no pieces side by side, or one above the other, come to. Any layout fits it still, once it is
 * pushed down and left.
 *
 *     pieces 152 and 102 on 302 x 202   ->   254 x 152, since 152 + 102 = 254 and 102 + 102 is too much
 *
 * @source Reduction to combinations of sizes: Herz (1972), IBM J Res Dev 16:462–469. From memory.
 */
export function reach(pieces: readonly PieceKind[], { width, height }: Size): Size {
  const sides = (one: 'width' | 'height', other: 'width' | 'height'): [size: number, count: number][] =>
    pieces.flatMap((piece) => [
      [piece[one], piece.count],
      [piece[other], piece.turn ? piece.count : 0],
    ]);
  return {
    width: longest(sides('width', 'height'), width),
    height: longest(sides('height', 'width'), height),
  };
}

/** The greatest sum within the room; the room itself where there are too many sums to tell. */
function longest(sizes: readonly (readonly [size: number, count: number])[], room: number): number {
  const sums = new Set([0]);
  for (const [size, count] of sizes) {
    let added = [...sums];
    for (let more = count; more > 0 && added.length > 0; more--) {
      added = added.map((sum) => sum + size).filter((sum) => sum <= room && !sums.has(sum));
      for (const sum of added) sums.add(sum);
      if (sums.size > mostSums) return room;
    }
  }
  return Math.max(...sums);
}

const mostSums = 5000;
