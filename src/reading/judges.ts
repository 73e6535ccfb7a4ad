import type { Judged, Module, PassMark, Scoring } from '../core/model/module.ts';
import { fileNamed } from '../core/model/file-named.ts';
import type { Rational } from '../core/model/values.ts';
import { nearName } from '../core/near-name.ts';
import { exact, exactText, rational } from '../core/quantity/exact.ts';
import { readShare } from '../core/quantity/read.ts';
import { weightOf } from '../core/scoring/checklist-score.ts';
import { passMarkOf } from '../core/scoring/pass-mark.ts';
import { limits } from './limits.ts';
import type { Report } from './report.ts';
import { decode } from './text/decode.ts';
import { wholeFile } from './text/source.ts';
import { type Cell, placeOfCell, readTable, type Table } from './text/table.ts';

/**
 * A module with what its judges said, from the CSV that its pass mark names. A file that is not there is left to the
 * checks; one that cannot be read leaves the module without its numbers.
 *
 *     angoff                  judge, and a column for each item: shares from 0 to 1, or 80 %
 *     borderline-regression   person, rating, points
 *     contrasting-groups      person, ready (yes or no), points
 */
export function withJudged(module: Module, files: ReadonlyMap<string, Uint8Array>, report: Report): Module {
  const { scoring } = module;
  const pass = scoring?.pass;
  if (!scoring || !pass || pass === 'none') return module;
  const file = `modules/${module.id}/${fileNamed(pass.judges) ?? pass.judges}`;
  const bytes = files.get(file);
  const judged = bytes && readJudged(file, bytes, { module, scoring, pass, report });
  return judged ? { ...module, scoring: { ...scoring, pass: { ...pass, judged } } } : module;
}

/** What a table of judges is read for. */
interface For {
  readonly module: Module;
  readonly scoring: Scoring;
  readonly pass: PassMark;
  readonly report: Report;
}

function readJudged(file: string, bytes: Uint8Array, of: For): Judged | undefined {
  const { scoring, pass, report } = of;
  const source = decode(file, bytes, limits.tableBytes, report);
  const table = source && readTable(source, report);
  const judged = table && areColumnsRight(table, of) ? valuesOf(table, of) : undefined;
  if (!judged || passMarkOf(scoring, { ...pass, judged })) return judged;
  report({ code: 'judges-give-no-mark', variant: pass.method, facts: { file } }, wholeFile(file));
  return undefined;
}

/** Of each method. The first column says who; nothing of it is kept. Angoff has one for each item besides. */
export const judgesColumns: Readonly<Record<PassMark['method'], readonly string[]>> = {
  angoff: ['judge'],
  'borderline-regression': ['person', 'rating', 'points'],
  'contrasting-groups': ['person', 'ready', 'points'],
};

function columnsOf({ scoring, pass: { method } }: For): readonly string[] {
  return [...judgesColumns[method], ...(method === 'angoff' ? scoring.items.map(({ id }) => id) : [])];
}

/** Reports columns that are missing, that nobody knows, and that stand twice. */
function areColumnsRight(table: Table, of: For): boolean {
  const known = columnsOf(of);
  const { header } = table;
  const texts = header.map(({ text }) => text);
  const method = of.pass.method;
  const strange = header.filter(({ text }) => !known.includes(text));
  const twice = header.filter(({ text }, i) => known.includes(text) && texts.indexOf(text) < i);
  const missing = known.filter((name) => !texts.includes(name));
  for (const cell of strange) {
    const near = nearName(cell.text, missing);
    const facts = { column: cell.text, method, known: known.join(', '), ...(near ? { near } : {}) };
    of.report(
      { code: 'judges-column-unknown', ...(near ? { variant: 'near' } : {}), facts },
      placeOfCell(table, cell),
    );
  }
  for (const cell of twice)
    of.report({ code: 'judges-column-twice', facts: { column: cell.text } }, placeOfCell(table, cell));
  if (strange.length === 0 && missing.length > 0) {
    const facts = { column: missing[0]!, method, header: known.join(',') };
    of.report({ code: 'judges-column-missing', facts }, placeOfCell(table, header[0]!));
  }
  return strange.length + twice.length + missing.length === 0;
}

type CellReader<T> = (text: string) => T | undefined;

const share: CellReader<Rational> = (text) => {
  const reading = readShare(text);
  return reading.ok && exact(reading.value).compare(1) <= 0 ? reading.value : undefined;
};
const number: CellReader<Rational> = (text) =>
  /^\d+(\.\d+)?$/.test(text) ? rational(exact(text)) : undefined;
const yesOrNo: CellReader<boolean> = (text) => {
  const word = text.toLowerCase();
  return word === 'yes' ? true : word === 'no' ? false : undefined;
};

/** The values of a table whose columns are right; `undefined` after a report of those that mean nothing. */
function valuesOf(table: Table, of: For): Judged | undefined {
  const areRowsSound = areRowsOfTheirOwn(table, of);
  const most = weightOf(of.scoring.items);
  const points: CellReader<Rational> = (text) => {
    const value = number(text);
    return value === undefined || exact(value).compare(most) > 0 ? undefined : value;
  };
  const { at, isSound } = cellsOf(table, exactText(most), of.report);
  const judged = judgedFrom(table.rows, of, {
    share: (row, item) => at(row, item, 'share', share),
    rating: (row) => at(row, 'rating', 'rating', number),
    ready: (row) => at(row, 'ready', 'ready', yesOrNo),
    points: (row) => at(row, 'points', 'points', points),
  });
  return areRowsSound && isSound() ? judged : undefined;
}

type Row = readonly Cell[];

interface Columns {
  readonly share: (row: Row, item: string) => Rational;
  readonly rating: (row: Row) => Rational;
  readonly ready: (row: Row) => boolean;
  readonly points: (row: Row) => Rational;
}

function judgedFrom(rows: readonly Row[], { pass: { method }, scoring }: For, columns: Columns): Judged {
  const { share: shareIn, rating, ready, points } = columns;
  switch (method) {
    case 'angoff':
      return { method, shares: rows.map((row) => scoring.items.map(({ id }) => shareIn(row, id))) };
    case 'borderline-regression':
      return { method, rated: rows.map((row) => ({ rating: rating(row), points: points(row) })) };
    case 'contrasting-groups':
      return { method, people: rows.map((row) => ({ ready: ready(row), points: points(row) })) };
  }
}

/** Reads cells by their column; what means nothing is reported, and then not all was sound. */
function cellsOf(table: Table, most: string, report: Report) {
  let isSound = true;
  const at = <T>(row: Row, column: string, variant: string, reader: CellReader<T>): T => {
    const cell = row[table.header.findIndex(({ text }) => text === column)]!;
    const value = reader(cell.text);
    if (value === undefined) {
      isSound = false;
      const facts = { value: cell.text, column, most };
      report({ code: 'judges-value', variant, facts }, placeOfCell(table, cell));
    }
    return value as T;
  };
  return { at, isSound: () => isSound };
}

/** Whether each row says whose it is, and nobody has two. */
function areRowsOfTheirOwn(table: Table, { report, pass }: For): boolean {
  const who = pass.method === 'angoff' ? 'judge' : 'person';
  const column = table.header.findIndex(({ text }) => text === who);
  const cells = table.rows.map((row) => row[column]!);
  const texts = cells.map(({ text }) => text);
  const wrong = cells.filter(({ text }, i) => text === '' || texts.indexOf(text) < i);
  for (const cell of wrong) {
    const code = cell.text === '' ? 'judges-row-of-nobody' : 'judges-row-twice';
    report({ code, facts: { who, name: cell.text } }, placeOfCell(table, cell));
  }
  return wrong.length === 0;
}
