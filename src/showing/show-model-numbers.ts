import { showCount } from './numbers.ts';
import { type Shown, shown } from './shown.ts';

/** Models in one row of a sheet, as many as leave room for a box to tick. */
const inOneRow = 12;

/** The numbers 1..made in rows that fit a sheet. */
export function modelRows(key: string, made: number): readonly (readonly Shown[])[] {
  const numbers = Array.from({ length: made }, (_, i) => shown(`${key}[${i}]`, showCount(i + 1)));
  const rows = Array.from({ length: Math.ceil(made / inOneRow) }, (_, i) => i * inOneRow);
  return rows.map((from) => numbers.slice(from, from + inOneRow));
}
