import { goodOrders } from './orders.ts';
import { areaOf, blanksOf, type Blank, type PieceKind } from './pieces.ts';
import { sumOver, type Filled, type Lay, type Stock } from './stock.ts';

export interface Start {
  readonly filled: readonly Filled[];
  /** Empty unless the stock is limited. */
  readonly left: readonly Blank[];
}

/** One sheet after the other, each the one that holds most for its value: the best of all good orders. */
export function goodStart(pieces: readonly PieceKind[], stock: readonly Stock[], lay: Lay): Start {
  const values = stock.map(({ value }) => value);
  const rank = ({ filled, left }: Start): number[] => [areaOf(left), sumOver(filled, values), filled.length];
  return goodOrders(blanksOf(pieces))
    .map((order) => sheetBySheet(order, stock, lay))
    .reduce((a, b) => (isLess(rank(b), rank(a)) ? b : a));
}

function sheetBySheet(order: readonly Blank[], stock: readonly Stock[], lay: Lay): Start {
  const filled: Filled[] = [];
  const used = stock.map(() => 0);
  for (let left = order; ; left = filled.at(-1)!.layout.left) {
    const next = bestNext(
      left,
      stock.map(({ count }, kind) => (used[kind]! < count ? kind : -1)).filter((kind) => kind >= 0),
      stock,
      lay,
    );
    if (!next) return { filled, left };
    filled.push(next);
    used[next.kind]! += 1;
  }
}

/** Least value for what is laid, then least waste. */
function bestNext(
  left: readonly Blank[],
  kinds: readonly number[],
  stock: readonly Stock[],
  lay: Lay,
): Filled | undefined {
  const rate = ({ kind, layout }: Filled): number[] => {
    const { value, width, height } = stock[kind]!;
    const laid = areaOf(left) - areaOf(layout.left);
    return [value / laid, (width * height) / laid];
  };
  return kinds
    .map((kind): Filled => ({ kind, layout: lay(left, stock[kind]!.width, stock[kind]!.height) }))
    .filter(({ layout }) => layout.placements.length > 0)
    .reduce<Filled | undefined>(
      (best, next) => (best && !isLess(rate(next), rate(best)) ? best : next),
      undefined,
    );
}

/** Which of two rows of numbers comes first. */
function isLess(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 && a[at]! < b[at]!;
}
