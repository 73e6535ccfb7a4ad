import { isMap, isScalar, isSeq, parseDocument, type Document, type Node, type Pair } from 'yaml';
import type { Place } from '../../core/diagnostic.ts';
import { limits } from '../limits.ts';
import type { Report } from '../report.ts';
import { placeAt, placeOfLine, type Source } from '../text/source.ts';
import { reportEatenText } from './eaten-text.ts';
import { reportRefusedYaml } from './refused-yaml.ts';
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
  if (reportSyntax(document, source, spot, report) || reportRefusedYaml(document, spot, report))
    return undefined;
  const eaten = reportEatenText(document, yaml.text, spot, report);
  const values = plain(document.contents) as RawMap;
  return { source, values, faulty: repeated || eaten, ...placesIn(document, source, spot) };
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
  let open = 0;
  let offset = yaml.offset;
  for (const line of yaml.text.split('\n')) {
    for (const mark of line.match(/[[\]{}]/g) ?? [])
      open = Math.max(0, open + ('[{'.includes(mark) ? 1 : -1));
    const lists = /^\s*((?:[-?:]\s+)*)/.exec(line)![1]!.replaceAll(/\s/g, '').length;
    if (open > limits.nesting || lists > limits.nesting) {
      report(
        { code: 'too-nested', facts: { most: String(limits.nesting) } },
        placeAt(source, offset, offset + line.length),
      );
      return true;
    }
    offset += line.length + 1;
  }
  return false;
}

/** A key in braces without a value was reported before, and is left out. */
function plain(node: unknown): Raw {
  if (isMap(node)) {
    const pairs = node.items.filter(({ value }) => value !== null);
    return Object.fromEntries(pairs.map((pair) => [keyText(pair), plain(pair.value)]));
  }
  if (isSeq(node)) return node.items.map(plain);
  return isScalar(node) ? String(node.value ?? '') : '';
}

function keyText(pair: Pair): string {
  return isScalar(pair.key) ? String(pair.key.value ?? '') : '';
}

function placesIn(document: Document.Parsed, source: Source, spot: Spot): Pick<Sheet, 'valueAt' | 'keyAt'> {
  const placeOf = (node: unknown): Place => {
    const range = (node as Node | null)?.range;
    return range ? spot(range[0], range[1]) : placeOfLine(source, 1);
  };
  const at = (path: Path, which: 'key' | 'value'): Place => {
    let [node, key]: [unknown, unknown] = [document.contents, null];
    for (const step of path) {
      const next = below(node, step);
      if (!next) return node === document.contents ? placeOfLine(source, 1) : placeOf(key ?? node);
      [node, key] = [next.value, next.key];
    }
    if (path.length === 0) return placeOfLine(source, 1);
    return placeOf(which === 'key' ? (key ?? node) : node);
  };
  return { valueAt: (path) => at(path, 'value'), keyAt: (path) => at(path, 'key') };
}

function below(node: unknown, step: string | number): { key: unknown; value: unknown } | undefined {
  if (isSeq(node))
    return Number(step) in node.items ? { key: null, value: node.items[Number(step)] } : undefined;
  return isMap(node) ? node.items.find((pair) => keyText(pair) === String(step)) : undefined;
}
