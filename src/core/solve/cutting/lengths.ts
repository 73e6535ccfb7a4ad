import { Bug } from '../../diagnostic.ts';
import { type InPieces, atOnce } from '../../in-pieces.ts';
import { cuttingStock } from './cut-stock.ts';
import { fillingRods } from './fill-rods.ts';
import { layAlong } from './lay-along.ts';

/** Rods, tubes or cord of one length. All lengths are whole numbers of one unit. */
export interface RodKind {
  readonly length: number;
  /** Whole, zero or more: minor units of money. It counts only where every kind has one. */
  readonly price?: number;
  /** How many there are; as many as one likes where left out. */
  readonly count?: number;
}
/** So many like pieces to cut. */
export interface LengthKind {
  readonly length: number;
  readonly count: number;
}

export interface LengthProblem {
  /** At least one kind. Offcuts at hand are rods with a count and a price of 0. */
  readonly stock: readonly RodKind[];
  /** Each fits at least one kind of rod. */
  readonly pieces: readonly LengthKind[];
  /** What the saw takes between two pieces; 0 where left out. */
  readonly gap?: number;
  /** How many pieces may be laid in search of a better plan; 60,000 where left out. Work, never seconds. */
  readonly budget?: number;
}

export interface RodCuts {
  /** In the order in which they are cut: the one with the longest offcut last. `stock` is the index of its kind. */
  readonly rods: readonly {
    readonly stock: number;
    readonly used: number;
    readonly pieces: readonly { readonly piece: number; readonly at: number }[];
  }[];
  /** Price of all rods where every kind has one, else their length. */
  readonly value: number;
  /** No plan has a smaller value. */
  readonly bound: number;
  /** No plan takes fewer rods. */
  readonly fewest: number;
  /** How many of each piece found no room: all 0 unless every kind of rod has a count. */
  readonly left: readonly number[];
}

/**
 * Lengths cut from whole rods at the least price; where some kind has no price, from the least length. Then from the
 * fewest rods, then so that one rod keeps the longest offcut.
 *
 * @throws {Bug} Where a piece is longer than every rod: see `longerThanAll`.
 */
export function cutLengths(problem: LengthProblem): RodCuts {
  return atOnce(cuttingLengths(problem));
}

/** The same, in small pieces of work. */
export function* cuttingLengths({
  stock,
  pieces,
  gap = 0,
  budget = 60_000,
}: LengthProblem): InPieces<RodCuts> {
  const tooLong = longerThanAll(stock, pieces);
  if (tooLong.length > 0) throw new Bug('pieces longer than every rod', { tooLong });
  const { filled, ...rest } = yield* cuttingStock({
    pieces: pieces.map(({ length, count }) => ({ width: 1, height: length + gap, count, turn: false })),
    sizes: stock.map(({ length, price, count }) => ({
      width: 1,
      height: length + gap,
      across: 1,
      amount: length,
      price,
      count,
    })),
    lay: layAlong,
    fill: fillingRods,
    budget,
  });
  const rods = filled.map(({ kind, layout: { top, placements } }) => ({
    stock: kind,
    used: top - gap,
    pieces: placements.map(({ piece, y }) => ({ piece, at: y })),
  }));
  return { rods, ...rest };
}

/** Indexes of the pieces that are longer than every rod. */
export function longerThanAll(stock: readonly RodKind[], pieces: readonly LengthKind[]): number[] {
  return pieces.flatMap(({ length, count }, index) =>
    count > 0 && !stock.some((rod) => length <= rod.length) ? [index] : [],
  );
}
