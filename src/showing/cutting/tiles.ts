import { sheetWords } from '../../words/sheets.ts';
import { fill } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import { type Shown, shown } from '../shown/shown.ts';
import type { ShownPattern, ShownTile } from '../shown/shown-sheets.ts';

/** What one sheet of paper has room for, in mm: it fits on A4 and on Letter alike, with a head and a foot. */
export const tileRoom = { width: 180, height: 216 } as const;
/** So much of a tile is on its neighbour too, in mm. */
export const overlap = 10;

/**
 * An outline cut into tiles that overlap, named like the squares of a map: letters down, numbers across.
 *
 *     | A1 |:| A2 |:| A3 |       : is on both
 */
export function tilesOf(
  key: string,
  width: number,
  height: number,
): Pick<ShownPattern, 'columns' | 'rows' | 'range' | 'tiles'> {
  const columns = tilesAlong(width, tileRoom.width);
  const rows = tilesAlong(height, tileRoom.height);
  const tiles = Array.from({ length: columns * rows }, (_, i) =>
    tileAt(`${key}[${i}]`, i % columns, Math.floor(i / columns), columns, rows),
  );
  return { columns, rows, range: shown(`${key}.range`, rangeOf(columns, rows)), tiles };
}

function tilesAlong(length: number, room: number): number {
  return length <= room ? 1 : 1 + Math.ceil((length - room) / (room - overlap));
}

function tileAt(key: string, column: number, row: number, columns: number, rows: number): ShownTile {
  const name = nameOf(column, row);
  const beyond = (at: string, tile: string): Shown =>
    shown(`${key}.${at}`, fill(sheetWords.patterns.goesOn, { tile }));
  return {
    name: shown(`${key}.name`, name),
    of: shown(
      `${key}.of`,
      columns * rows === 1
        ? sheetWords.patterns.onlyTile
        : fill(sheetWords.patterns.tile, { tiles: rangeOf(columns, rows) }),
    ),
    column,
    row,
    x: column * (tileRoom.width - overlap),
    y: row * (tileRoom.height - overlap),
    ...(column + 1 < columns ? { across: beyond('across', nameOf(column + 1, row)) } : {}),
    ...(row + 1 < rows ? { below: beyond('below', nameOf(column, row + 1)) } : {}),
  };
}

/** "A1–B3", "A1". */
function rangeOf(columns: number, rows: number): string {
  const [first, last] = [nameOf(0, 0), nameOf(columns - 1, rows - 1)];
  return first === last ? first : fill(sheetWords.patterns.tiles, { first, last });
}

/** "B3". After Z comes AA. */
function nameOf(column: number, row: number): string {
  return `${lettersOf(row)}${showCount(column + 1)}`;
}

function lettersOf(n: number): string {
  const letter = String.fromCharCode(65 + (n % 26));
  return n < 26 ? letter : lettersOf(Math.floor(n / 26) - 1) + letter;
}
