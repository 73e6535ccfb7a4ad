import { limits } from '../limits.ts';
import type { Report } from '../report.ts';
import type { YamlText } from '../sheet/sheet.ts';
import { placeAt, type Source } from '../text/source.ts';

/**
 * What the parser takes for each thing it meets, in microseconds, measured over texts made of nothing else. Most of
 * it grows with the text; three things grow with their square, and would take a megabyte to minutes.
 */
const costs = {
  letter: 2,
  line: 80,
  emptyLine: 8,
  /** A bar: the cell of a table. */
  cell: 70,
  /** A sign that may open or close something. */
  mark: 30,
  /** Each such sign is compared with those before it in its paragraph. */
  pairOfMarks: 0.05,
  /** Each quote or list that a line opens is compared with those round it. */
  pairOfContainers: 4,
  /** Each heading that is made by underlining moves what stands before it. */
  pairOfUnderlinings: 0.7,
} as const;

/**
 * Whether a text holds more than the parser should be given; reports the line from which on it does. One pass over
 * the lines, before the parser: what it takes grows with the length of the text and with nothing else.
 */
export function reportTooMuch(source: Source, text: YamlText, report: Report): boolean {
  const tally = { work: 0, marksInParagraph: 0, underlinings: 0 };
  let offset = text.offset;
  for (const line of text.text.split('\n')) {
    const over = overLimit(line, tally);
    if (over) {
      const facts = { file: source.file, most: over.most };
      report(
        { code: 'too-much-markdown', variant: over.variant, facts },
        placeAt(source, offset, offset + line.length),
      );
      return true;
    }
    offset += line.length + 1;
  }
  return false;
}

interface Tally {
  work: number;
  marksInParagraph: number;
  underlinings: number;
}

function overLimit(
  line: string,
  tally: Tally,
): { readonly variant: string; readonly most: string } | undefined {
  const depth = containersOf(line);
  const cells = count(line, /\|/g);
  if (depth > limits.nesting) return { variant: 'nesting', most: String(limits.nesting) };
  if (cells > limits.tableColumns + 1) return { variant: 'columns', most: String(limits.tableColumns) };
  tally.work += workOf(line, depth, cells, tally);
  return tally.work > limits.parsingSeconds * 1e6
    ? { variant: 'work', most: String(limits.parsingSeconds) }
    : undefined;
}

function workOf(line: string, depth: number, cells: number, tally: Tally): number {
  if (line.trim() === '') tally.marksInParagraph = 0;
  const marks = count(line, /[[\]*_`<~&\\]/g);
  const underlining = /^ {0,3}(=+|-+)[ \t]*$/.test(line) ? 1 : 0;
  tally.underlinings += underlining;
  tally.marksInParagraph += marks;
  return (
    (line.trim() === '' ? costs.emptyLine : costs.line) +
    line.length * costs.letter +
    cells * costs.cell +
    marks * (costs.mark + tally.marksInParagraph * costs.pairOfMarks) +
    depth * depth * costs.pairOfContainers +
    underlining * tally.underlinings * costs.pairOfUnderlinings
  );
}

/** Quotes and lists that a line opens inside one another; a line further right counts by its indent. */
function containersOf(line: string): number {
  const opening = /^(?:[ \t]*(?:>|[-+*](?=[ \t]|$)|\d{1,9}[.)](?=[ \t]|$)))*/.exec(line)![0];
  const opened = count(opening, /[>+*-]|\d+[.)]/g);
  const indent = /^[ \t]*/.exec(line)![0].replaceAll('\t', '    ').length;
  return line.trim() === '' ? 0 : opened + Math.floor(indent / 2);
}

const count = (text: string, pattern: RegExp): number => text.match(pattern)?.length ?? 0;
