import { stringify } from 'csv-stringify/sync';

/** A number stays one, as the digits that it is given in; of a text that looks like a formula no program makes one. */
export type Cell = string | number | undefined;

/**
 * A table as the text of a CSV file: lines end in CR LF, cells are quoted where they must be, and the file says that it
 * is in UTF-8 (spreadsheets guess else). A text that begins like a formula has an apostrophe before it; so has what
 * would begin a cell of its own where semicolons, tabs or line ends part them, as they do for spreadsheets in half of
 * Europe.
 *
 * @source RFC 4180 (2005). Formulas: OWASP, CSV Injection (common practice); the mark of UTF-8: Unicode 15, 23.8.
 */
export function csvText(header: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const guarded = rows.map((row) =>
    row.map((cell) => (typeof cell === 'string' ? guardedWithin(cell) : cell)),
  );
  return stringify([header, ...guarded], {
    bom: true,
    record_delimiter: 'windows',
    quote_record_delimiter: true,
    escape_formulas: true,
  });
}

function guardedWithin(text: string): string {
  return text.replace(/[;\t\r\n](?="*[=+\-@])/g, "$&'");
}
