import type { Element, ElementContent } from 'hast';
import { h, s } from 'hastscript';

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
      ...(sheet.goesOn ? [tornEdge()] : []),
      ...sheet.across.flatMap((mark) => markAcross(mark, sheet)),
      ...sheet.up.flatMap((mark) => markUp(mark, sheet)),
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
  const small = isLow(box, sheet) ? ['is-small'] : [];
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

/** Of the width of the picture, a letter takes about so much, a number so much; two lines are so high, one so much. */
const letterWide = 0.024;
const numberWide = 0.028;
const twoLines = 0.09;
const oneLine = 0.055;
const smallLine = 0.03;

/** How many lines of letters have room on a piece: its number, then its name. */
function linesOn(box: PieceBox, { by, width }: CutSheet): number {
  if (by === 'lengths') return box.width < numberWide * width ? 0 : 1;
  if (box.width < numberWide * width || box.height < smallLine * width) return 0;
  return box.width > box.name.text.length * letterWide * width && box.height > twoLines * width ? 2 : 1;
}

/** Whether a number on it is set small. */
function isLow(box: Box, { by, width }: CutSheet): boolean {
  return by !== 'lengths' && (box.height < oneLine * width || box.width < oneLine * width);
}

function markAcross({ at, label }: Mark, { by, width }: CutSheet): readonly Element[] {
  const last = by === 'lengths' && at === width ? ['is-last'] : [];
  return [
    s('text', { className: ['cut-edge', ...last], x: share(at, width), y: '100%', dy: '1.35em' }, label.text),
  ];
}

function markUp({ at, label }: Mark, sheet: CutSheet): readonly Element[] {
  const place = { x: '0', y: fromTop(at, sheet), dx: '-0.5em', dy: '0.35em' };
  return [s('text', { className: ['cut-edge', 'is-up'], ...place }, label.text)];
}

/** A roll goes on beyond the picture. */
function tornEdge(): Element {
  return s('line', { className: ['cut-torn'], x1: '0', x2: '100%', y1: '0', y2: '0' });
}

function placed(box: Box, sheet: CutSheet): Record<'x' | 'y' | 'width' | 'height', string> {
  return {
    x: share(box.x, sheet.width),
    y: fromTop(box.y + box.height, sheet),
    width: share(box.width, sheet.width),
    height: share(box.height, sheet.height),
  };
}

function fromTop(y: number, { height }: CutSheet): string {
  return share(height - y, height);
}

/** A part of a whole as a percentage, to a thousandth: the gap of a saw is still seen on a long sheet. */
function share(part: number, whole: number): string {
  return `${Math.round((100_000 * part) / whole) / 1000}%`;
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
