import type { Layout } from './lay-out.ts';
import type { PieceKind, Placement } from './pieces.ts';
import type { Size, Work } from './stock.ts';

/**
 * From this x on, up to the next step, all below y is taken or out of reach: a staircase that goes down to the right.
 *
 *     │───┐
 *     │   └──────┐        a piece may go into each inner corner
 *     └──────────┴──
 */
interface Step {
  readonly x: number;
  readonly y: number;
}

interface State {
  readonly sheet: number;
  readonly steps: readonly Step[];
  readonly left: readonly number[];
}

/**
 * The pieces laid on these sheets, where that can be done at all: every way is tried, since each way of laying
 * rectangles can be pushed down and left and then built corner by corner.
 *
 * @param work  One for each state that is looked at; it stops after 5,000 of them.
 * @returns `none` is proven; `unknown`: the work was not enough.
 * @source Corner points: Martello, Pisinger and Vigo (2000), Oper Res 48:256–267. From memory.
 */
export function everyWay(
  pieces: readonly PieceKind[],
  sheets: readonly Size[],
  work: Work,
): Layout[] | 'none' | 'unknown' {
  const most = Math.min(5000, work.left);
  const seen = new Set<string>();
  const laid: Placement[][] = sheets.map(() => []);
  const go = (state: State): boolean => {
    if (state.left.every((count) => count === 0)) return true;
    if (state.sheet === sheets.length || areaLeft(state, sheets) < areaAsked(state, pieces)) return false;
    const key = JSON.stringify(state);
    if (seen.has(key) || seen.size >= most) return false;
    seen.add(key);
    work.left--;
    const moves = movesFrom(state, pieces, sheets[state.sheet]!);
    for (const move of moves) {
      laid[state.sheet]!.push(move);
      if (go(after(state, move, pieces))) return true;
      laid[state.sheet]!.pop();
    }
    return moves.length === 0 && go({ sheet: state.sheet + 1, steps: floor, left: state.left });
  };
  if (!go({ sheet: 0, steps: floor, left: pieces.map(({ count }) => count) }))
    return seen.size < most ? 'none' : 'unknown';
  return laid.map((placements) => ({ placements, left: [], top: topOf(placements, pieces) }));
}

const floor: readonly Step[] = [{ x: 0, y: 0 }];

function movesFrom({ steps, left }: State, pieces: readonly PieceKind[], sheet: Size): Placement[] {
  return pieces.flatMap((kind, piece) =>
    left[piece] === 0
      ? []
      : [false, true].flatMap((turned) => {
          if (turned && (!kind.turn || kind.width === kind.height)) return [];
          const { width, height } = lying(kind, turned);
          return steps
            .filter(({ x, y }) => x + width <= sheet.width && y + height <= sheet.height)
            .map(({ x, y }) => ({ piece, x, y, turned }));
        }),
  );
}

function lying({ width, height }: Size, turned: boolean): Size {
  return turned ? { width: height, height: width } : { width, height };
}

/** The staircase with one more piece: nothing is laid below or left of it any more. */
function after(
  { sheet, steps, left }: State,
  { piece, x, y, turned }: Placement,
  pieces: readonly PieceKind[],
): State {
  const { width, height } = lying(pieces[piece]!, turned);
  const [right, top] = [x + width, y + height];
  const higher = steps.filter((step) => step.y > top);
  const under = steps.filter((step) => step.y <= top && step.x <= right);
  return {
    sheet,
    steps: [
      ...higher,
      { x: under[0]!.x, y: top },
      { x: right, y: under.at(-1)!.y },
      ...steps.filter((step) => step.x > right),
    ],
    left: left.map((count, kind) => (kind === piece ? count - 1 : count)),
  };
}

function areaLeft({ sheet, steps }: State, sheets: readonly Size[]): number {
  const { width, height } = sheets[sheet]!;
  const here = steps.reduce((sum, { x, y }, at) => sum + ((steps[at + 1]?.x ?? width) - x) * (height - y), 0);
  return sheets.slice(sheet + 1).reduce((sum, other) => sum + other.width * other.height, here);
}

function areaAsked({ left }: State, pieces: readonly PieceKind[]): number {
  return pieces.reduce((sum, { width, height }, piece) => sum + left[piece]! * width * height, 0);
}

function topOf(placements: readonly Placement[], pieces: readonly PieceKind[]): number {
  return Math.max(0, ...placements.map(({ piece, y, turned }) => y + lying(pieces[piece]!, turned).height));
}
