import type { Element, ElementContent } from 'hast';
import { h, s } from 'hastscript';
import { marksAcross, marksUp } from './cut-marks.ts';
import { fromTop, placed, share } from './cut-places.ts';

/** Places in millimetres from the lower left corner. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
/** What stands at an edge. */
export interface Mark {
  readonly at: number;
  readonly label: Text;
}
export interface Text {
  readonly key: string;
  readonly text: string;
}
export interface CutSheet {
  readonly by: 'sheets' | 'roll' | 'lengths';
  readonly width: number;
  readonly height: number;
  /** What is left whole. */
  readonly left?: Box;
  readonly goesOn: boolean;
  readonly boxes: readonly PieceBox[];
  readonly across: readonly Mark[];
  readonly up: readonly Mark[];
}
/** A piece, and what is written on it. */
export interface PieceBox extends Box {
  readonly number: Text;
  readonly name: Text;
}

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
export function cutPicture(sheet: CutSheet): Element {
  const kind = sheet.by === 'lengths' ? 'cut-lengths' : 'cut-flat';
  const shape = sheet.height > sheet.width ? ['is-tall'] : [];
  return h('div', { className: ['cut', kind, ...shape], ariaHidden: 'true' }, [
    s('svg', { className: ['cut-shape'], viewBox: shapeOf(sheet), focusable: 'false' }),
    s('svg', { className: ['cut-drawing'], focusable: 'false' }, [
      s('rect', { className: ['cut-sheet'], width: '100%', height: '100%' }),
      ...waste(sheet),
      ...sheet.boxes.flatMap((box) => pieceOf(box, sheet)),
      ...(sheet.goesOn ? [tornEdge(sheet)] : []),
      ...marksAcross(sheet),
      ...marksUp(sheet),
    ]),
  ]);
}

/** A length has no shape of its own: it is as high as its style says. */
function shapeOf({ by, width, height }: CutSheet): string {
  return by === 'lengths' ? '0 0 1000 1' : `0 0 ${width} ${height}`;
}

/** Everything that is no piece is hatched, and what is left whole has an edge of its own. */
function waste(sheet: CutSheet): readonly Element[] {
  const all = s('rect', {
    className: ['cut-waste'],
    width: '100%',
    height: '100%',
    fill: `url(#${hatchId})`,
  });
  return sheet.left ? [all, s('rect', { className: ['cut-left'], ...placed(sheet.left, sheet) })] : [all];
}

function pieceOf(box: PieceBox, sheet: CutSheet): readonly ElementContent[] {
  const { number, name } = box;
  const middle = { x: share(box.x + box.width / 2, sheet.width), y: fromTop(box.y + box.height / 2, sheet) };
  const lines = linesOn(box, sheet);
  const small = [
    ...(isLow(box, sheet) ? ['is-small'] : []),
    ...(isCrowded(box, number.text, sheet) ? ['is-crowded'] : []),
  ];
  return [
    s('rect', { className: ['cut-piece'], ...placed(box, sheet) }),
    ...(lines > 0
      ? [
          s(
            'text',
            { className: ['cut-number', ...small], ...middle, dy: lines > 1 ? '-0.1em' : '0.35em' },
            number.text,
          ),
        ]
      : []),
    ...(lines > 1 ? [s('text', { className: ['cut-name'], ...middle, dy: '1.2em' }, name.text)] : []),
  ];
}

/**
 * Shares of the width of a picture: of a letter, by its shape; of a number; how high two lines are, one, and a small one.
 * Measured at the least width that a picture has beside its table; narrower ones hide what is crowded.
 */
const letterWide = 0.018;
const letterWideOnTall = 0.024;
const numberWide = 0.028;
const twoLines = 0.09;
const oneLine = 0.055;
const smallLine = 0.03;
const digitOnPhone = 0.02;
const lineOnPhone = 0.05;

/** How many lines of letters have room on a piece: its number, then its name. */
function linesOn(box: PieceBox, { by, width, height }: CutSheet): number {
  if (by === 'lengths') return box.width < numberWide * width ? 0 : 1;
  if (box.width < numberWide * width || box.height < smallLine * width) return 0;
  const letter = height > width ? letterWideOnTall : letterWide;
  return box.width > box.name.text.length * letter * width && box.height > twoLines * width ? 2 : 1;
}

/** Whether a number on it is set small. */
function isLow(box: Box, { by, width }: CutSheet): boolean {
  return by !== 'lengths' && (box.height < oneLine * width || box.width < oneLine * width);
}

/** Whether a number on it would run over its edges on a phone. */
function isCrowded(box: Box, number: string, { by, width }: CutSheet): boolean {
  const isLow = by !== 'lengths' && box.height < lineOnPhone * width;
  return isLow || box.width < (number.length + 0.5) * digitOnPhone * width;
}

/** A roll goes on above the picture, a length beyond its right end. */
function tornEdge({ by }: CutSheet): Element {
  const from = by === 'lengths' ? '100%' : '0';
  const to = by === 'lengths' ? '100%' : '0';
  return s('line', { className: ['cut-torn'], x1: from, x2: '100%', y1: '0', y2: to });
}

const hatchId = 'offcut';

/** The hatching of what is left over, which all pictures of a page share. */
export function offcutHatching(): Element {
  return s('svg', { className: ['defs'], width: '0', height: '0', ariaHidden: 'true', focusable: 'false' }, [
    s('defs', [
      s(
        'pattern',
        {
          id: hatchId,
          width: '7',
          height: '7',
          patternUnits: 'userSpaceOnUse',
          patternTransform: 'rotate(-45)',
        },
        [s('rect', { className: ['offcut-line'], width: '1', height: '7' })],
      ),
    ]),
  ]);
}
