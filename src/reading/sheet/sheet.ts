import { parseDocument, type Document } from 'yaml';
import type { Place } from '../../core/diagnostic.ts';
import { limits } from '../limits.ts';
import type { Report } from '../report.ts';
import { placeAt, placeOfLine, type Source } from '../text/source.ts';
import { reportEatenText } from './eaten-text.ts';
import { reportHiddenEscapes } from './hidden-escapes.ts';
import { reportRefusedYaml } from './refused-yaml.ts';
import { valuesAndSpans, type Spans } from './values-and-spans.ts';
import { reportRepeatedKeys, reportSyntax } from './syntax.ts';

/** What YAML's plainest schema gives: every scalar is the text that the author wrote, `13:00`, `0012`, `4.10`. */
export type Raw = string | RawList | RawMap;
export type RawList = readonly Raw[];
export interface RawMap {
  readonly [key: string]: Raw;
}

/** Keys and indexes from the top of a file down to a value, as the author wrote them. */
export type Path = readonly (string | number)[];

/** The front matter of one file (or a whole `.yaml` file) as plain values, and the place of each. */
export interface Sheet {
  readonly source: Source;
  readonly values: RawMap;
  /** Whether something of it was reported already; its other values can be read all the same. */
  readonly faulty: boolean;
  /** The value at a path, or the nearest written one above it. */
  valueAt(path: Path): Place;
  /** The key at a path; of a list's item the value. */
  keyAt(path: Path): Place;
}

/** The text of YAML inside a file: `offset` is where it begins. */
export interface YamlText {
  readonly text: string;
  readonly offset: number;
}

/** The values of a YAML text, or `undefined` after a report of all that keeps it from being read. */
export function readSheet(source: Source, yaml: YamlText, report: Report): Sheet | undefined {
  if (reportDepth(source, yaml, report)) return undefined;
  const document = parse(yaml.text);
  const spot = (from: number, to: number): Place => placeAt(source, from + yaml.offset, to + yaml.offset);
  const repeated = reportRepeatedKeys(document, source, spot, report);
  const unreadable =
    reportSyntax(document, source, spot, report) || reportRefusedYaml(document, spot, report);
  if (unreadable) return undefined;
  const eaten = reportEatenText(document, yaml.text, spot, report);
  const hidden = reportHiddenEscapes(document, spot, report);
  const { values, spans } = valuesAndSpans(document.contents);
  return { source, values, faulty: repeated || eaten || hidden, ...placesIn(spans, source, spot) };
}

/** A stretch of the YAML text as a place of the file. */
export type Spot = (from: number, to: number) => Place;

function parse(text: string): Document.Parsed {
  return parseDocument(text, {
    version: '1.2',
    schema: 'failsafe',
    merge: false,
    uniqueKeys: true,
    prettyErrors: false,
    logLevel: 'error',
    keepSourceTokens: true,
  });
}

/**
 * Brackets in brackets and lists in lists, counted line by line before the parser, which calls itself for each.
 * Brackets inside quotes count too: nobody writes a hundred that stay open.
 */
function reportDepth(source: Source, yaml: YamlText, report: Report): boolean {
  let [open, offset] = [0, yaml.offset];
  for (const line of yaml.text.split('\n')) {
    const deepest = deepestBracket(line, open);
    if (Math.max(deepest.most, listsOpened(line)) > limits.nesting) {
      const facts = { most: String(limits.nesting) };
      report({ code: 'too-nested', facts }, placeAt(source, offset, offset + line.length));
      return true;
    }
    open = deepest.left;
    offset += line.length + 1;
  }
  return false;
}

/** How many brackets are open at once in a line at most, and after it, where so many were open before. */
function deepestBracket(line: string, open: number): { readonly most: number; readonly left: number } {
  let [most, left] = [open, open];
  for (const mark of line.match(/[[\]{}]/g) ?? []) {
    left = Math.max(0, left + ('[{'.includes(mark) ? 1 : -1));
    most = Math.max(most, left);
  }
  return { most, left };
}

/** `- - - a`: lists that a line opens inside one another. */
function listsOpened(line: string): number {
  return /^\s*((?:[-?:]\s+)*)/.exec(line)![1]!.replaceAll(/\s/g, '').length;
}

function placesIn(
  spans: ReadonlyMap<string, Spans>,
  source: Source,
  spot: Spot,
): Pick<Sheet, 'valueAt' | 'keyAt'> {
  const at = (path: Path, which: 'key' | 'value'): Place => {
    const found = spans.get(path.join('/'));
    if (found) return spot(...(which === 'key' ? (found.key ?? found.value) : found.value));
    return path.length > 1 ? at(path.slice(0, -1), 'value') : placeOfLine(source, 1);
  };
  return { valueAt: (path) => at(path, 'value'), keyAt: (path) => at(path, 'key') };
}
