import type { InPieces } from '../../in-pieces.ts';
import { everyWay } from './every-way.ts';
import { layOut, type Layout } from './lay-out.ts';
import { drawer, type Draw } from '../draw.ts';
import { goodOrders, neighbour } from './orders.ts';
import { areaOf, blanksOf, type Blank, type PieceKind } from './pieces.ts';
import { areTooLarge, type FilledOrNot, type Filled, type Sheet, type Work } from './stock.ts';

/** What is laid on each of the sheets, and what is left over. */
interface Attempt {
  readonly order: readonly Blank[];
  readonly sheets: readonly Sheet[];
  readonly layouts: readonly Layout[];
  readonly left: readonly Blank[];
}

/**
 * The pieces laid on these sheets, all of them or not at all.
 *
 *     good orders -> every way, where there are few -> the best laid again in parts, until the work is done
 *
 * @returns `none`: there is provably no way. `unknown`: none was found.
 */
export function* fillingSheets(
  pieces: readonly PieceKind[],
  sheets: readonly Sheet[],
  work: Work,
): InPieces<FilledOrNot> {
  const blanks = blanksOf(pieces);
  if (areTooLarge(pieces, sheets)) return 'none';
  const begun = goodOrders(blanks)
    .flatMap((order) => [sheets, [...sheets].reverse()].map((row) => layAll(order, row, work)))
    .reduce(better);
  yield;
  if (begun.left.length === 0) return filledOf(begun);
  const ways = blanks.length > fewPieces ? 'unknown' : everyWay(pieces, sheets, work);
  if (ways === 'none') return ways;
  if (ways !== 'unknown') return filledOf({ sheets, layouts: ways });
  const end = work.left / 2;
  const found =
    sheets.length > 2
      ? yield* againInParts(begun, pieces, work, end)
      : yield* inNearOrders(begun, pieces, work, end);
  return found.left.length === 0 ? filledOf(found) : 'unknown';
}

export const fewPieces = 12;

/** Orders near the best, until that is enough or the work has gone down to `end`. */
function* inNearOrders(
  best: Attempt,
  pieces: readonly PieceKind[],
  work: Work,
  end: number,
): InPieces<Attempt> {
  const draw = drawer();
  const mayTurn = pieces.map(({ turn }) => turn);
  while (best.left.length > 0 && work.left > end) {
    best = better(best, layAll(neighbour(best.order, mayTurn, draw), best.sheets, work));
    yield;
  }
  return best;
}

/**
 * Two or three sheets emptied and laid again together with what is left over; kept where no more is left than before.
 *
 * @source Ruin and recreate: Schrimpf et al. (2000), J Comput Phys 159:139–171. From memory.
 */
function* againInParts(
  { order, sheets, ...begun }: Attempt,
  pieces: readonly PieceKind[],
  work: Work,
  end: number,
): InPieces<Attempt> {
  const draw = drawer();
  const mayTurn = pieces.map(({ turn }) => turn);
  const layouts = [...begun.layouts];
  let left = begun.left;
  while (left.length > 0 && work.left > end) {
    const some = someOf(sheets.length, 2 + draw(2), draw);
    const laid = some.flatMap((at) => layouts[at]!.placements.map(({ piece }) => freshBlank(pieces, piece)));
    const orders = goodOrders([...laid, ...left.map(({ kind }) => freshBlank(pieces, kind))]);
    let near = orders[draw(orders.length)]!;
    for (let change = draw(4); change > 0; change--) near = neighbour(near, mayTurn, draw);
    const again = layAll(
      near,
      some.map((at) => sheets[at]!),
      work,
    );
    yield;
    const before = { left, layouts: some.map((at) => layouts[at]!) };
    if (compare(again, before, pieces) > 0) continue;
    some.forEach((at, index) => (layouts[at] = again.layouts[index]!));
    left = again.left;
  }
  return { order, sheets, layouts, left };
}

function someOf(count: number, some: number, draw: Draw): number[] {
  const chosen = new Set<number>();
  while (chosen.size < some) chosen.add(draw(count));
  return [...chosen];
}

function freshBlank(pieces: readonly PieceKind[], kind: number): Blank {
  const { width, height, turn } = pieces[kind]!;
  return { kind, width, height, turn, turned: false };
}

/** Less left over comes first, then full and empty sheets rather than all half full. */
function compare(
  a: Pick<Attempt, 'left' | 'layouts'>,
  b: Pick<Attempt, 'left' | 'layouts'>,
  pieces: readonly PieceKind[],
): number {
  const evenness = ({ layouts }: Pick<Attempt, 'layouts'>): number =>
    layouts.reduce(
      (sum, { placements }) => sum - areaOf(placements.map(({ piece }) => pieces[piece]!)) ** 2,
      0,
    );
  return areaOf(a.left) - areaOf(b.left) || evenness(a) - evenness(b);
}

/** The one that leaves less area over; of equals the second. */
function better(a: Attempt, b: Attempt): Attempt {
  return areaOf(a.left) < areaOf(b.left) ? a : b;
}

/** One sheet after the other, each as far as it goes. */
function layAll(order: readonly Blank[], sheets: readonly Sheet[], work: Work): Attempt {
  let left = order;
  const layouts = sheets.map(({ width, height }) => {
    const layout = left.length > 0 ? layOut(left, width, height) : { placements: [], left, top: 0 };
    left = layout.left;
    return layout;
  });
  work.left -= order.length;
  return { order, sheets, layouts, left };
}

export function filledOf({ sheets, layouts }: Pick<Attempt, 'sheets' | 'layouts'>): Filled[] {
  return layouts.flatMap((layout, at) =>
    layout.placements.length > 0 ? [{ kind: sheets[at]!.kind, layout }] : [],
  );
}
