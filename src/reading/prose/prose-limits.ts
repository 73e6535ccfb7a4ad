import { limits } from '../limits.ts';
import type { Report } from '../report.ts';
import type { YamlText } from '../sheet.ts';
import { placeAt, type Source } from '../source.ts';

/** Marks whose pairs the parser looks for through a whole paragraph: too many of one, and it would take minutes. */
const marks = ['[', '*', '_', '`', '<', '~', '&', '\\'] as const;

/**
 * Whether a text holds more than the parser should be given; reports the first such line. One pass, line by line:
 * what it counts grows with the length of the text and with nothing else.
 */
export function reportTooMuch(source: Source, text: YamlText, report: Report): boolean {
  let inParagraph = marks.map(() => 0);
  let offset = text.offset;
  for (const line of text.text.split('\n')) {
    if (line.trim() === '') inParagraph = marks.map(() => 0);
    inParagraph = inParagraph.map((count, index) => count + occurrences(line, marks[index]!));
    const over = overLimit(line, inParagraph);
    if (over) {
      report(
        { code: 'too-much-markdown', variant: over.variant, facts: over.facts },
        placeAt(source, offset, offset + line.length),
      );
      return true;
    }
    offset += line.length + 1;
  }
  return false;
}

interface Over {
  readonly variant: string;
  readonly facts: Readonly<Record<string, string>>;
}

function overLimit(line: string, inParagraph: readonly number[]): Over | undefined {
  if (containers(line) > limits.nesting)
    return { variant: 'nesting', facts: { most: String(limits.nesting) } };
  if (occurrences(line, '|') > limits.tableColumns + 1)
    return { variant: 'columns', facts: { most: String(limits.tableColumns) } };
  const crowded = inParagraph.findIndex((count) => count > limits.marksInParagraph);
  if (crowded < 0) return undefined;
  return { variant: 'marks', facts: { mark: marks[crowded]!, most: String(limits.marksInParagraph) } };
}

/** Quotes and lists that a line opens inside one another; a list indented deeper counts by its indent. */
function containers(line: string): number {
  const opening = /^(?:[ \t]*(?:>|[-+*](?=[ \t])|\d{1,9}[.)](?=[ \t])))*[ \t]*/.exec(line)![0];
  const marksOpened = opening.replaceAll(/[ \t]/g, '').replaceAll(/\d+[.)]/g, '1').length;
  const indent = /^[ \t]*/.exec(line)![0].replaceAll('\t', '    ').length;
  return marksOpened + Math.floor(indent / 2);
}

function occurrences(line: string, mark: string): number {
  let count = 0;
  for (let at = line.indexOf(mark); at >= 0; at = line.indexOf(mark, at + 1)) count++;
  return count;
}
