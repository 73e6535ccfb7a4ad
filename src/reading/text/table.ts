import { CsvError, type InfoField, parse } from 'csv-parse/sync';
import type { Place } from '../../core/diagnostic.ts';
import type { Report } from '../report.ts';
import { placeAt, type Source, wholeFile } from './source.ts';

/** A cell of a table and where it stands: offsets into its file, quotes included. */
export interface Cell {
  /** Without quotes, and without the blanks round it. */
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

export interface Table {
  readonly source: Source;
  readonly header: readonly Cell[];
  /** As many cells as the header, each. */
  readonly rows: readonly (readonly Cell[])[];
}

export function placeOfCell({ source }: Pick<Table, 'source'>, { from, to }: Cell): Place {
  return placeAt(source, from, Math.max(to, from + 1));
}

/**
 * A CSV file, each cell with its place, or `undefined` after a report of what keeps it from being read. Cells are parted
 * by commas, or by semicolons where the header is; rows without anything in them are passed over.
 *
 * @source RFC 4180 (2005), read strictly: a quote stands round a whole cell or nowhere. Semicolons are what
 *         spreadsheets write where the comma is a decimal mark; common practice, no source.
 */
export function readTable(source: Source, report: Report): Table | undefined {
  const all = readRows(source, report);
  const [header, ...rows] = all?.filter((row) => row.some(({ text }) => text !== '')) ?? [];
  if (!all) return undefined;
  if (!header) return refuseEmpty(source, report);
  const uneven = rows.filter((row) => row.length !== header.length);
  for (const row of uneven) {
    const facts = { cells: String(row.length), columns: String(header.length) };
    report({ code: 'table-row-uneven', facts }, placeAt(source, row[0]!.from, row.at(-1)!.to));
  }
  return uneven.length > 0 ? undefined : { source, header, rows };
}

function readRows(source: Source, report: Report): readonly (readonly Cell[])[] | undefined {
  const { text } = source;
  const offsetOf = offsetsIn(text);
  let from = 0;
  const cast = (value: string, { bytes }: InfoField): Cell => {
    const cell = { text: value.trim(), from: offsetOf(from), to: offsetOf(bytes) };
    from = bytes + 1;
    return cell;
  };
  const rules = {
    cast,
    trim: true,
    relax_column_count: true,
    delimiter: separatorOf(text),
    record_delimiter: '\n',
  };
  try {
    return parse(text, rules) as unknown as readonly (readonly Cell[])[];
  } catch (trouble) {
    if (!(trouble instanceof CsvError)) throw trouble;
    return refuseQuote(source, offsetOf(from), report);
  }
}

/** From bytes, in which the parser counts, to letters of the text; asked for rising ones. */
function offsetsIn(text: string): (bytes: number) => number {
  const bytes = new TextEncoder().encode(text);
  const decoder = new TextDecoder('utf-8', { ignoreBOM: true });
  let [atBytes, atLetters] = [0, 0];
  return (upTo) => {
    atLetters += decoder.decode(bytes.subarray(atBytes, upTo)).length;
    atBytes = Math.max(atBytes, upTo);
    return atLetters;
  };
}

function separatorOf(text: string): ',' | ';' {
  const [header = ''] = text.split('\n', 1);
  return header.includes(';') && !header.includes(',') ? ';' : ',';
}

function refuseEmpty(source: Source, report: Report): undefined {
  report({ code: 'table-empty', facts: { file: source.file } }, wholeFile(source.file));
}

/** In the cell from there on. */
function refuseQuote(source: Source, at: number, report: Report): undefined {
  report({ code: 'table-quote-astray', facts: {} }, placeAt(source, at));
}
