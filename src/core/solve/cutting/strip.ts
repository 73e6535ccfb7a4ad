import { layOut, type Layout } from './lay-out.ts';
import { drawer } from '../draw.ts';
import { goodOrders, neighbour } from './orders.ts';
import { areaOf, blanksOf, grown, type Blank, type PieceKind, type Placement } from './pieces.ts';

export interface StripProblem {
  /** Of the roll, across. */
  readonly width: number;
  readonly pieces: readonly PieceKind[];
  /** Between pieces, not at edges; 0 where left out. */
  readonly gap?: number;
  /** How many pieces may be laid in search of a shorter length; 60,000 where left out. Work, never seconds. */
  readonly budget?: number;
}

export interface StripLayout {
  /** Length of strip that the pieces take. */
  readonly length: number;
  /** No layout can be shorter. */
  readonly bound: number;
  readonly placements: readonly Placement[];
}

/**
 * The pieces laid on a strip of fixed width so that they take little of its length.
 *
 * Good orders first, then neighbours of the best while the budget lasts or until the bound is met.
 *
 * @param problem  Whole numbers of one unit. Every piece fits the width, turned where it may.
 * @returns A layout without overlaps, and the length below which none exists.
 */
export function cutStrip(problem: StripProblem): StripLayout {
  const gap = problem.gap ?? 0;
  const blanks = blanksOf(grown(problem.pieces, gap));
  if (blanks.length === 0) return { length: 0, bound: 0, placements: [] };
  const width = problem.width + gap;
  const bound = stripBound(blanks, width);
  const mayTurn = problem.pieces.map(({ turn }) => turn);
  const best = search(blanks, mayTurn, width, bound, problem.budget ?? 60_000);
  return { length: best.top - gap, bound: bound - gap, placements: best.placements };
}

function search(
  blanks: readonly Blank[],
  mayTurn: readonly boolean[],
  width: number,
  bound: number,
  budget: number,
): Layout {
  const tried = goodOrders(blanks)
    .map((order) => ({ order, layout: layOut(order, width) }))
    .filter(({ layout }) => layout.left.length === 0);
  let { order, layout } = tried.reduce((a, b) => (b.layout.top < a.layout.top ? b : a));
  const draw = drawer();
  const passes = Math.floor(budget / blanks.length);
  for (let pass = 0; pass < passes && layout.top > bound; pass++) {
    const nextOrder = neighbour(order, mayTurn, draw);
    const next = layOut(nextOrder, width);
    if (next.left.length === 0 && next.top <= layout.top) [order, layout] = [nextOrder, next];
  }
  return layout;
}

/**
 * The area bound, the tallest piece however it is laid, and the pieces too wide to lie beside each other, stacked.
 *
 * @source Lodi, Martello and Monaci (2002), Eur J Oper Res 141:241–252, section on bounds. From memory.
 */
export function stripBound(blanks: readonly Blank[], width: number): number {
  const least = (blank: Blank): number =>
    blank.turn && blank.height <= width ? Math.min(blank.width, blank.height) : blank.height;
  const narrowest = (blank: Blank): number =>
    blank.turn ? Math.min(blank.width, blank.height) : blank.width;
  const stacked = blanks.filter((blank) => 2 * narrowest(blank) > width);
  return Math.max(
    Math.ceil(areaOf(blanks) / width),
    ...blanks.map(least),
    stacked.reduce((sum, blank) => sum + least(blank), 0),
  );
}
