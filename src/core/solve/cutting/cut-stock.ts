import type { InPieces } from '../../in-pieces.ts';
import { goodStart } from './good-start.ts';
import { lighterStock, type Question } from './lighter-stock.ts';
import { needsOf } from './needs.ts';
import type { PieceKind } from './pieces.ts';
import { reach } from './reach.ts';
import { fits, sumOver, type Fill, type Filled, type Lay, type Size, type Stock } from './stock.ts';
import { withLargeOffcut } from './with-large-offcut.ts';

/** Pieces to cut from sheets or rods, all grown by the gap. */
export interface StockProblem {
  readonly pieces: readonly PieceKind[];
  readonly sizes: readonly StockSize[];
  readonly lay: Lay;
  readonly fill: Fill;
  /** Pieces that may be laid in search of a better answer. */
  readonly budget: number;
}
export interface StockSize extends Size {
  /** Its width without the gap, for its offcut. */
  readonly across: number;
  /** Its area or length, which it counts for unless all have prices. */
  readonly amount: number;
  readonly price: number | undefined;
  readonly count: number | undefined;
}

export interface StockCut {
  /** The one with the largest offcut last. */
  readonly filled: readonly Filled[];
  /** How many of each piece found no room; all 0 unless the stock is limited. */
  readonly left: readonly number[];
  readonly value: number;
  /** No answer has less value; 0 where pieces are left. */
  readonly bound: number;
  /** No answer takes fewer sheets; 0 where pieces are left. */
  readonly fewest: number;
}

/**
 * The pieces cut from stock of the least value, then from the fewest, then with the largest offcut.
 *
 *     a good start -> choices of stock by rising value, the first that can be filled -> fewer of no more value
 *     -> the last cut ever shorter
 */
export function* cuttingStock({ pieces, sizes, lay, fill, budget }: StockProblem): InPieces<StockCut> {
  const none = pieces.map(() => 0);
  if (pieces.every(({ count }) => count === 0))
    return { filled: [], left: none, value: 0, bound: 0, fewest: 0 };
  const stock = stockOf(sizes, pieces);
  const values = stock.map(({ value }) => value);
  const ones = stock.map(() => 1);
  const question: Question = { pieces, stock, needs: needsOf(pieces, stock), fill, work: { left: budget } };
  const start = goodStart(pieces, stock, lay);
  const cheap = yield* lighterStock(question, start.left.length > 0 ? undefined : start.filled, values);
  if (!cheap.filled) {
    const left = none.map((_, piece) => start.left.filter(({ kind }) => kind === piece).length);
    return { filled: start.filled, left, value: sumOver(start.filled, values), bound: 0, fewest: 0 };
  }
  const few = yield* lighterStock(question, cheap.filled, ones, sumOver(cheap.filled, values));
  const filled = yield* withLargeOffcut(question, few.filled ?? cheap.filled);
  return { filled, left: none, value: sumOver(filled, values), bound: cheap.bound, fewest: few.bound };
}

/** As many of each size as could be of use at most: one for each piece. */
function stockOf(sizes: readonly StockSize[], pieces: readonly PieceKind[]): Stock[] {
  const total = pieces.reduce((sum, { count }) => sum + count, 0);
  const priced = sizes.every(({ price }) => price !== undefined);
  return sizes.map(({ width, height, across, amount, price, count }) => ({
    ...reach(pieces, { width, height }),
    full: { width: across, height },
    value: (priced ? price : undefined) ?? amount,
    count: pieces.some((piece) => fits(piece, { width, height })) ? Math.min(count ?? total, total) : 0,
  }));
}
