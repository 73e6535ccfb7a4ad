import type { Place } from '../../core/diagnostic.ts';

/** A text file of the workspace with the start of each line. Lines end in `\n` alone; a byte order mark is gone. */
export interface Source {
  /** Path below the workspace, with forward slashes. */
  readonly file: string;
  readonly text: string;
  /** Offset of the first character of each line; never empty. */
  readonly starts: readonly number[];
}

export function makeSource(file: string, text: string): Source {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return { file, text, starts };
}

/** The place of the characters from one offset up to another; what runs over the end of the line is left out. */
export function placeAt(source: Source, from: number, to = from + 1): Place {
  const line = lineOf(source, from);
  const start = source.starts[line]!;
  const text = lineText(source, line + 1);
  const length = Math.max(1, Math.min(to, start + text.length) - from);
  return { file: source.file, line: line + 1, column: from - start + 1, length, text };
}

/** The place of a whole line, without the blanks round it. Lines count from 1. */
export function placeOfLine(source: Source, line: number): Place {
  const text = lineText(source, line);
  const indent = text.length - text.trimStart().length;
  return { file: source.file, line, column: indent + 1, length: Math.max(1, text.trim().length), text };
}

/** Where a file is at fault as a whole. */
export function wholeFile(file: string): Place {
  return { file, line: 1, column: 1, length: 1, text: '' };
}

/** A line's text without its end. Lines count from 1; what is past the last is empty. */
export function lineText(source: Source, line: number): string {
  const start = source.starts[line - 1];
  if (start === undefined) return '';
  const next = source.starts[line];
  return source.text.slice(start, next === undefined ? undefined : next - 1);
}

/** Index of the line that holds an offset, by halving. */
function lineOf(source: Source, offset: number): number {
  let [low, high] = [0, source.starts.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (source.starts[middle]! <= offset) low = middle;
    else high = middle - 1;
  }
  return low;
}
