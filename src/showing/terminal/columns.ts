import { wrapped } from '../text/wrapped.ts';

/** How a column of a table in plain text is set: numbers to the right; the one that gives way wraps. */
export interface Column {
  readonly align: 'left' | 'right';
  readonly wraps?: boolean;
}

const gap = 2;

/** Rows as lines of plain text in aligned columns: see `eachInColumns`. */
export function inColumns(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): string[] {
  return eachInColumns(columns, rows, width).flat();
}

/**
 * The lines of each row in aligned columns, none above `width`. Only cells of columns that wrap are broken; a
 * table whose other columns are wider than the width alone is cut into words all the same.
 */
export function eachInColumns(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  width: number,
): string[][] {
  const natural = columns.map((_, i) => Math.max(0, ...rows.map((row) => (row[i] ?? '').length)));
  const used = natural.map((w, i) => (w === 0 ? [] : [i])).flat();
  const over = sum(used.map((i) => natural[i]!)) + gap * (used.length - 1) - width;
  const widths = over > 0 ? shrunk(columns, natural, over) : natural;
  return rows.map((row) => rowLines(row, columns, widths, used));
}

/** The wrapping columns give way in proportion, but keep room for a word. */
function shrunk(columns: readonly Column[], natural: readonly number[], over: number): number[] {
  const wrapping = natural.filter((w, i) => columns[i]!.wraps && w > leastWidth);
  const spare = sum(wrapping) - leastWidth * wrapping.length;
  return natural.map((w, i) =>
    columns[i]!.wraps && w > leastWidth ? w - Math.ceil((over * (w - leastWidth)) / Math.max(spare, 1)) : w,
  );
}
const leastWidth = 12;

function rowLines(
  row: readonly string[],
  columns: readonly Column[],
  widths: readonly number[],
  used: readonly number[],
): string[] {
  const cells = used.map((i) => broken(row[i] ?? '', Math.max(widths[i]!, 1)));
  const height = Math.max(1, ...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, y) =>
    used
      .map((i, x) => {
        const text = cells[x]![y] ?? '';
        return columns[i]!.align === 'right' ? text.padStart(widths[i]!) : text.padEnd(widths[i]!);
      })
      .join(' '.repeat(gap))
      .trimEnd(),
  );
}

/** A text on lines of at most `width`; a word longer than that is cut. No-break spaces hold their words together. */
function broken(text: string, width: number): string[] {
  return wrapped(text.replace(new RegExp(`[^ ]{${width}}`, 'gu'), '$& '), width);
}

/** Each line moved in. */
export function indented(lines: readonly string[], by = 2): string[] {
  return lines.map((line) => (line === '' ? '' : ' '.repeat(by) + line));
}

const sum = (numbers: readonly number[]): number => numbers.reduce((all, n) => all + n, 0);
