import type { CutLayout, CutPiece, CuttingPlan, PlannedLine } from '../../core/plan/result.ts';
import { type Exact, zero } from '../../core/quantity/exact.ts';
import { cuttingWords } from '../../words/cutting.ts';
import { fill } from '../text/fill.ts';
import { areaNumbers, ruleNumber, showLength } from './cut-lengths.ts';
import { place } from '../text/millimetres.ts';
import { showCount } from '../text/numbers.ts';
import { pieceName } from './piece-name.ts';
import type { Box, CutDrawing, Mark } from '../shown/shown-cutting.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type { System } from '../text/systems.ts';
import { withRoom } from '../text/with-room.ts';

/**
 * A cut sheet as places to draw by. A roll or a length is drawn a little beyond what is used, so that its pieces are not
 * lost on it; a length lies on its side:
 *
 *     +------+------+--+        ^ up
 *     |   3  |  4   |//|        |
 *     +------+------+--+        |
 *     |   1  |  2   |//|        0 --> across
 *     +------+------+--+
 */
export function drawCut(
  key: string,
  layout: CutLayout,
  by: CuttingPlan['by'],
  lines: readonly PlannedLine[],
  system: System,
): CutDrawing {
  return by === 'lengths'
    ? drawLength(key, layout, lines, system)
    : drawSheet(key, layout, by, lines, system);
}

function drawSheet(
  key: string,
  layout: CutLayout,
  by: 'sheets' | 'roll',
  lines: readonly PlannedLine[],
  system: System,
): CutDrawing {
  const { width, used, pieces } = layout;
  const height = by === 'roll' ? rollShown(layout) : place(layout.length);
  const boxes = pieces.map((piece, i) => ({
    ...boxOf(piece.x, piece.y, piece.width, piece.height),
    ...textsOf(`${key}.boxes[${i}]`, piece, i, lines, system),
  }));
  const left = height - place(used);
  return {
    by,
    width: place(width),
    height,
    ...(left > 0 ? { left: { x: 0, y: place(used), width: place(width), height: left } } : {}),
    goesOn: by === 'roll' && height < place(layout.length),
    boxes,
    across: marks(
      `${key}.across`,
      [width, ...edges(pieces.map(({ x, width: across }) => [x, x.add(across)]))],
      { apart: place(width) / 10, say: (length) => ruleNumber(length, system) },
    ),
    up: marks(
      `${key}.up`,
      [
        by === 'roll' ? used : layout.length,
        used,
        ...edges(pieces.map(({ y, height: up }) => [y, y.add(up)])),
      ],
      { apart: place(width) / 16, say: (length) => ruleNumber(length, system) },
    ),
  };
}

/** A tenth of its width more than is used, as far as the roll goes. */
function rollShown({ width, length, used }: CutLayout): number {
  return Math.min(place(length), Math.round(place(used) + place(width) / 10));
}

/** Half as much again as is used, as far as the length goes. */
function lengthShown({ length, used }: CutLayout): number {
  return Math.min(place(length), Math.round(place(used) * 1.5));
}

function drawLength(
  key: string,
  layout: CutLayout,
  lines: readonly PlannedLine[],
  system: System,
): CutDrawing {
  const { length, used, pieces } = layout;
  const width = lengthShown(layout);
  const left = width - place(used);
  const goesOn = width < place(length);
  return {
    by: 'lengths',
    width,
    height: 1,
    ...(left > 0 ? { left: { x: place(used), y: 0, width: left, height: 1 } } : {}),
    goesOn,
    boxes: pieces.map((piece, i) => ({
      x: place(piece.y),
      y: 0,
      width: place(piece.height),
      height: 1,
      ...textsOf(`${key}.boxes[${i}]`, piece, i, lines, system),
    })),
    across: marks(
      `${key}.across`,
      [...(goesOn ? [] : [length]), ...edges(pieces.map(({ y, height }) => [y, y.add(height)]))],
      { apart: width / 8, say: (length) => showLength(length, system) },
    ),
    up: [],
  };
}

/** What stands on a piece: its number in the table, and what it is. */
function textsOf(
  key: string,
  piece: CutPiece,
  index: number,
  lines: readonly PlannedLine[],
  system: System,
): Record<'number' | 'name', Shown> {
  const { width, height } = piece;
  const size = width.n === 0n ? showLength(height, system) : areaNumbers(width, height, system);
  const facts = { piece: pieceName(piece, lines), size };
  return {
    number: shown(`${key}.number`, showCount(index + 1)),
    name: shown(`${key}.name`, fill(cuttingWords.pieceSize, facts)),
  };
}

function boxOf(x: Exact, y: Exact, width: Exact, height: Exact): Box {
  return { x: place(x), y: place(y), width: place(width), height: place(height) };
}

/** Where the last of the pieces ends, then where pieces begin, from the corner on. */
function edges(spans: readonly (readonly [from: Exact, to: Exact])[]): readonly Exact[] {
  const inOrder = [...spans.map(([from]) => from)].sort((a, b) => a.compare(b));
  const end = spans.reduce((last, [, to]) => (to.compare(last) > 0 ? to : last), zero);
  return [end, ...inOrder.filter((from) => from.compare(0) > 0)];
}

/** Those that have room beside the ones before them in the list; in order along the edge. */
function marks(
  key: string,
  at: readonly Exact[],
  { apart, say }: { readonly apart: number; readonly say: (length: Exact) => string },
): readonly Mark[] {
  const isNear = (a: Exact, b: Exact): boolean => Math.abs(place(a) - place(b)) < apart;
  return [...withRoom(at, isNear)]
    .sort((a, b) => a.compare(b))
    .map((mark, i) => ({ at: place(mark), label: shown(`${key}[${i}].label`, say(mark)) }));
}
