import type { InPieces } from '../../in-pieces.ts';
import { bestPattern } from './best-pattern.ts';
import { everyWay } from './every-way.ts';
import { fewPieces, filledOf } from './fill-sheets.ts';
import type { Layout } from './lay-out.ts';
import { along } from './lay-along.ts';
import type { PieceKind } from './pieces.ts';
import { areTooLarge, type FilledOrNot, type Sheet, type Work } from './stock.ts';

/**
 * The pieces laid on these rods, all of them or not at all: rod by rod the pattern that is worth most, again and again.
 * What was cut with much waste is worth more the next time, so that it finds its place earlier.
 *
 * @returns `none`: there is provably no way. `unknown`: none was found.
 * @source Sequential value correction: Belov and Scheithauer (2007), Eur J Oper Res 178:356–372, after Mukhacheva; its
 *         power of the length is a product here, which is the same on every machine. From memory.
 */
export function* fillingRods(
  pieces: readonly PieceKind[],
  rods: readonly Sheet[],
  work: Work,
): InPieces<FilledOrNot> {
  const needed = pieces.reduce((sum, { height, count }) => sum + height * count, 0);
  const total = pieces.reduce((sum, { count }) => sum + count, 0);
  if (areTooLarge(pieces, rods)) return 'none';
  const worths = pieces.map(({ height }) => height);
  const end = work.left / 2;
  for (let pass = 0; pass === 0 || work.left > end; pass++) {
    const layouts = rodByRod(pieces, rods, worths);
    work.left -= total;
    yield;
    if (layouts.reduce((sum, { top }) => sum + top, 0) === needed) return filledOf({ sheets: rods, layouts });
    const ways = pass === 0 && total <= fewPieces ? everyWay(pieces, rods, work) : 'unknown';
    if (ways !== 'unknown') return ways === 'none' ? ways : filledOf({ sheets: rods, layouts: ways });
  }
  return 'unknown';
}

function rodByRod(pieces: readonly PieceKind[], rods: readonly Sheet[], worths: number[]): Layout[] {
  const left = pieces.map(({ count }) => count);
  const kinds = pieces.map(({ height }, kind) => ({ kind, height }));
  return rods.map(({ height: room }) => {
    const wanted = pieces.map(({ height }, at) => ({ length: height, worth: worths[at]!, count: left[at]! }));
    const pattern = bestPattern(wanted, room);
    const layout = along(kinds, pattern);
    pattern.forEach((count, at) => {
      if (count === 0) return;
      const { height, count: all } = pieces[at]!;
      const deserved = (height * (1 + height / room / 10) * room) / layout.top;
      const share = count / (1.2 * (all + left[at]!));
      worths[at] = (1 - share) * worths[at]! + share * deserved;
      left[at]! -= count;
    });
    return layout;
  });
}
