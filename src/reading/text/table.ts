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

/** `"…"` with quotes doubled inside it, or anything without a quote. */
const patterns = {
  ',': /[^\S\n]*(?:"((?:[^"]|"")*)"|([^",\n]*))[^\S\n]*/y,
  ';': /[^\S\n]*(?:"((?:[^"]|"")*)"|([^";\n]*))[^\S\n]*/y,
} as const;

function readRows(source: Source, report: Report): readonly (readonly Cell[])[] | undefined {
  const { text } = source;
  const mark = separatorOf(text);
  const rows: Cell[][] = [[]];
  for (let at = 0; at <= text.length; at++) {
    const pattern = patterns[mark];
    pattern.lastIndex = at;
    const [whole, quoted, plain = ''] = pattern.exec(text)!;
    const to = at + whole.length;
    rows.at(-1)!.push({ text: (quoted?.replaceAll('""', '"') ?? plain).trim(), from: at, to });
    const next = text[to];
    if (next !== undefined && next !== mark && next !== '\n') return refuseQuote(source, to, report);
    if (next === '\n') rows.push([]);
    at = to;
  }
  return rows;
}

function separatorOf(text: string): ',' | ';' {
  const [header = ''] = text.split('\n', 1);
  return header.includes(';') && !header.includes(',') ? ';' : ',';
}

function refuseEmpty(source: Source, report: Report): undefined {
  report({ code: 'table-empty', facts: { file: source.file } }, wholeFile(source.file));
}

function refuseQuote(source: Source, at: number, report: Report): undefined {
  report({ code: 'table-quote-astray', facts: {} }, placeAt(source, at));
}
