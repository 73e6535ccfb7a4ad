import type { Element } from 'hast';
import { s } from 'hastscript';

/** What stands on a tile, in millimetres from the upper left corner of the outline. */
export interface OutlineToDraw {
  readonly width: number;
  readonly height: number;
  readonly mayTurn: boolean;
  /** Of the drawing beside the sheet; without one the outline is the rectangle itself. */
  readonly address?: string;
  readonly name: string;
  readonly size: string;
  /** Beside the arrow of what may not be turned. */
  readonly along: string;
}
export interface TileToDraw {
  readonly x: number;
  readonly y: number;
  readonly column: number;
  readonly row: number;
  /** What begins beyond its edges. */
  readonly across?: { readonly text: string };
  readonly below?: { readonly text: string };
}
export interface TileRoom {
  readonly width: number;
  readonly height: number;
  readonly overlap: number;
}

/** Round the room of a tile, so that lines on its edge are whole. */
const rim = 1;

/**
 * One tile at 1:1. Solid along the edges that are trimmed, dashed where the neighbour is laid; ticks on both meet.
 *
 *     .---------:---.
 *     | A1     -:-  |      :   A2 begins here
 *     |         :   |
 *     '---------:---'
 */
export function patternTile(outline: OutlineToDraw, tile: TileToDraw, room: TileRoom, name: string): Element {
  const width = Math.min(room.width, outline.width - tile.x);
  const height = Math.min(room.height, outline.height - tile.y);
  const [across, down] = [width + 2 * rim, height + 2 * rim];
  return s(
    'svg',
    {
      className: ['tile'],
      role: 'img',
      ariaLabel: name,
      width: `${across}mm`,
      height: `${down}mm`,
      viewBox: `${-rim} ${-rim} ${across} ${down}`,
    },
    [
      s('g', { transform: `translate(${-tile.x} ${-tile.y})` }, [...outlineOf(outline)]),
      ...joins(tile, room, { width, height }),
    ],
  );
}

function outlineOf(outline: OutlineToDraw): readonly Element[] {
  const { width, height, address } = outline;
  if (address !== undefined) return [s('image', { href: address, width, height })];
  return [
    s('rect', { className: ['outline'], width, height }),
    s('text', { className: ['outline-name'], x: 5, y: 9 }, outline.name),
    s('text', { className: ['outline-size'], x: 5, y: 14.5 }, outline.size),
    ...(outline.mayTurn ? [] : arrow(outline)),
  ];
}

/** Along the material, near the left edge. */
function arrow({ height, along }: OutlineToDraw): readonly Element[] {
  const [x, top, foot] = [14, height / 2 - 18, height / 2 + 18];
  return [
    s('path', {
      className: ['arrow'],
      d: `M${x} ${foot}V${top}M${x - 3} ${top + 6}L${x} ${top}L${x + 3} ${top + 6}`,
    }),
    s(
      'text',
      {
        className: ['outline-size'],
        x: x + 5,
        y: height / 2,
        textAnchor: 'middle',
        transform: `rotate(-90 ${x + 5} ${height / 2})`,
      },
      [along],
    ),
  ];
}

interface Extent {
  readonly width: number;
  readonly height: number;
}

function joins(
  { column, row, across, below }: TileToDraw,
  room: TileRoom,
  extent: Extent,
): readonly Element[] {
  const { width, height } = extent;
  const [right, foot] = [room.width - room.overlap, room.height - room.overlap];
  return [
    ...(column > 0 ? [line('trim', `M0 0V${height}`), ...ticksAlong(0, height, 'across')] : []),
    ...(row > 0 ? [line('trim', `M0 0H${width}`), ...ticksAlong(0, width, 'down')] : []),
    ...(across
      ? [
          line('join', `M${right} 0V${height}`),
          ...ticksAlong(right, height, 'across'),
          sideText(across.text, right, height),
        ]
      : []),
    ...(below
      ? [
          line('join', `M0 ${foot}H${width}`),
          ...ticksAlong(foot, width, 'down'),
          footText(below.text, foot, width),
        ]
      : []),
  ];
}

function line(kind: 'trim' | 'join' | 'meets', d: string): Element {
  return s('path', { className: [kind], d });
}

/** Two across each join, at the same places on both of its tiles. */
function ticksAlong(at: number, length: number, way: 'across' | 'down'): readonly Element[] {
  const from = Math.max(0, at - 5);
  return [length / 4, (3 * length) / 4].map((place) =>
    line('meets', way === 'across' ? `M${from} ${place}H${at + 5}` : `M${place} ${from}V${at + 5}`),
  );
}

function sideText(text: string, x: number, height: number): Element {
  const [at, middle] = [x + 4, height / 2];
  return s(
    'text',
    {
      className: ['join-text'],
      x: at,
      y: middle,
      textAnchor: 'middle',
      transform: `rotate(90 ${at} ${middle})`,
    },
    [text],
  );
}

function footText(text: string, y: number, width: number): Element {
  return s('text', { className: ['join-text'], x: width / 2, y: y + 6, textAnchor: 'middle' }, [text]);
}

/** A bar of 100 mm with a tick each 10 mm: what a rule is laid on to see whether the printer kept the size. */
export function gauge(name: string): Element {
  const ticks = Array.from({ length: 11 }, (_, i) => `M${i * 10} 0V${i % 5 === 0 ? 5 : 3}`).join('');
  return s(
    'svg',
    {
      className: ['gauge'],
      role: 'img',
      ariaLabel: name,
      width: '110mm',
      height: '10mm',
      viewBox: '-5 -1 110 10',
    },
    [
      s('path', { className: ['gauge-bar'], d: 'M0 0H100' }),
      s('path', { className: ['gauge-ticks'], d: ticks }),
      ...[0, 50, 100].map((at) => s('text', { x: at, y: 8.6, textAnchor: 'middle' }, [String(at)])),
    ],
  );
}

/** Where a tile lies among all: the black one. */
export function tileMap(
  { columns, rows }: { readonly columns: number; readonly rows: number },
  here: { readonly column: number; readonly row: number },
  name: string,
): Element {
  const cells = Array.from(
    { length: columns * rows },
    (_, i) => [i % columns, Math.floor(i / columns)] as const,
  );
  return s(
    'svg',
    {
      className: ['tile-map'],
      role: 'img',
      ariaLabel: name,
      viewBox: `-0.1 -0.1 ${columns + 0.2} ${rows + 0.2}`,
    },
    cells.map(([x, y]) =>
      s('rect', {
        className: [x === here.column && y === here.row ? 'is-here' : 'is-there'],
        x,
        y,
        width: 1,
        height: 1,
      }),
    ),
  );
}
