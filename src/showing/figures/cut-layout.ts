import type { Box, CutDrawing, PieceBox } from '../shown/shown-cutting.ts';
import { marksAcross, marksUp } from './cut-marks.ts';
import { fromTop, placed, share } from './cut-places.ts';
import { type Tree, definitions, tree } from './tree.ts';

/**
 * A sheet as it is cut: its pieces numbered, what is left hatched, and along two edges where a rule is to be read.
 * Lines and letters keep their size at any width: the places are shares of the picture, its shape is that of a second,
 * empty one below it.
 *
 *     300 +------+------+--+
 *         |   2  |//////|//|
 *     150 +------+------+--+
 *         |   1  |   3  |//|
 *       0 +------+------+--+
 *         0     250    500 600
 */
export function cutLayout(sheet: CutDrawing): Tree {
  const kind = sheet.by === 'lengths' ? 'cut-lengths' : 'cut-flat';
  const shape = sheet.height > sheet.width ? ' is-tall' : '';
  return tree('div', { class: `cut ${kind}${shape}`, 'aria-hidden': 'true' }, [
    tree('svg', { class: 'cut-shape', viewBox: shapeOf(sheet), focusable: 'false' }),
    tree('svg', { class: 'cut-drawing', focusable: 'false' }, [
      tree('rect', { class: 'cut-sheet', width: '100%', height: '100%' }),
      ...waste(sheet),
      ...sheet.boxes.flatMap((box) => pieceOf(box, sheet)),
      ...(sheet.goesOn ? [tornEdge(sheet)] : []),
      ...marksAcross(sheet),
      ...marksUp(sheet),
    ]),
  ]);
}

/** A length has no shape of its own: it is as high as its style says. */
function shapeOf({ by, width, height }: CutDrawing): string {
  return by === 'lengths' ? '0 0 1000 1' : `0 0 ${width} ${height}`;
}

/** Everything that is no piece is hatched, and what is left whole has an edge of its own. */
function waste(sheet: CutDrawing): readonly Tree[] {
  const fill = `url(#${hatchId})`;
  const all = tree('rect', { class: 'cut-waste', width: '100%', height: '100%', fill });
  return sheet.left ? [all, tree('rect', { class: 'cut-left', ...placed(sheet.left, sheet) })] : [all];
}

function pieceOf(box: PieceBox, sheet: CutDrawing): readonly Tree[] {
  const { number, name } = box;
  const middle = { x: share(box.x + box.width / 2, sheet.width), y: fromTop(box.y + box.height / 2, sheet) };
  const lines = linesOn(box, sheet);
  const numberAt = { class: numberClass(box, sheet), ...middle, dy: lines > 1 ? '-0.1em' : '0.35em' };
  return [
    tree('rect', { class: 'cut-piece', ...placed(box, sheet) }),
    ...(lines > 0 ? [tree('text', numberAt, [number.text])] : []),
    ...(lines > 1 ? [tree('text', { class: 'cut-name', ...middle, dy: '1.2em' }, [name.text])] : []),
  ];
}

function numberClass(box: PieceBox, sheet: CutDrawing): string {
  const small = isLow(box, sheet) ? ' is-small' : '';
  return `cut-number${small}${isCrowded(box, box.number.text, sheet) ? ' is-crowded' : ''}`;
}

/**
 * Shares of the width of a picture: of a letter, by its shape; of a number; how high two lines are, one, and a small one.
 * Measured at the least width that a picture has beside its table; narrower ones hide what is crowded.
 */
const letterWide = 0.024;
const numberWide = 0.028;
const twoLines = 0.09;
const oneLine = 0.055;
const smallLine = 0.03;
const digitOnPhone = 0.02;
const lineOnPhone = 0.05;

/** How many lines of letters have room on a piece: its number, then its name. */
function linesOn(box: PieceBox, { by, width }: CutDrawing): number {
  if (by === 'lengths') return box.width < numberWide * width ? 0 : 1;
  if (box.width < numberWide * width || box.height < smallLine * width) return 0;
  return box.width > box.name.text.length * letterWide * width && box.height > twoLines * width ? 2 : 1;
}

/** Whether a number on it is set small. */
function isLow(box: Box, { by, width }: CutDrawing): boolean {
  return by !== 'lengths' && (box.height < oneLine * width || box.width < oneLine * width);
}

/** Whether a number on it would run over its edges on a phone. */
function isCrowded(box: Box, number: string, { by, width }: CutDrawing): boolean {
  const isLow = by !== 'lengths' && box.height < lineOnPhone * width;
  return isLow || box.width < (number.length + 0.5) * digitOnPhone * width;
}

/** A roll goes on above the picture, a length beyond its right end. */
function tornEdge({ by }: CutDrawing): Tree {
  const [from, to] = by === 'lengths' ? ['100%', '100%'] : ['0', '0'];
  return tree('line', { class: 'cut-torn', x1: from, x2: '100%', y1: '0', y2: to });
}

const hatchId = 'offcut';

/** The hatching of what is left over, which all pictures of a page share. */
export const offcutHatching: Tree = definitions([
  tree(
    'pattern',
    { id: hatchId, width: '7', height: '7', patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(-45)' },
    [tree('rect', { class: 'offcut-line', width: '1', height: '7' })],
  ),
]);
