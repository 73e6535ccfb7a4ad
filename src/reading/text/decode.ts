import type { Place } from '../../core/diagnostic.ts';
import type { Report } from '../report.ts';
import { hidden, hiddenIn } from './hidden.ts';
import { makeSource, placeAt, wholeFile, type Source } from './source.ts';

/**
 * The text of a file, or `undefined` after a report of why it has none: too long, not UTF-8, or with characters
 * that nobody sees (control characters, those that turn the writing direction round).
 */
export function decode(
  file: string,
  bytes: Uint8Array,
  mostBytes: number,
  report: Report,
): Source | undefined {
  if (bytes.length > mostBytes) return refuseLong(file, bytes.length, mostBytes, report);
  const text = utf8(bytes);
  if (text === undefined) {
    if (isUtf16(bytes)) report({ code: 'not-utf-8', variant: 'utf-16', facts: { file } }, wholeFile(file));
    else report({ code: 'not-utf-8', facts: { file } }, firstBadPlace(file, bytes));
    return undefined;
  }
  const source = makeSource(file, text.replace(/\r\n?/g, '\n'));
  return reportHidden(source, report) ? undefined : source;
}

function refuseLong(file: string, length: number, most: number, report: Report): undefined {
  const facts = { file, size: kilobytes(length), most: kilobytes(most) };
  report({ code: 'file-too-large', facts }, wholeFile(file));
}

const kilobytes = (bytes: number): string => `${Math.ceil(bytes / 1000)} kB`;

function utf8(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

const isUtf16 = (bytes: Uint8Array): boolean =>
  (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);

/** The first character that is not UTF-8: of the first line that does not decode, after the part that does. */
function firstBadPlace(file: string, bytes: Uint8Array): Place {
  let [line, start] = [1, 0];
  let end = endOfLine(bytes, start);
  while (end < bytes.length && utf8(bytes.subarray(start, end)) !== undefined) {
    [line, start] = [line + 1, end + 1];
    end = endOfLine(bytes, start);
  }
  const text = new TextDecoder().decode(bytes.subarray(start, end)).replace(/\r$/, '');
  return { file, line, column: Math.max(1, text.indexOf('\uFFFD') + 1), length: 1, text };
}

function endOfLine(bytes: Uint8Array, from: number): number {
  const at = bytes.indexOf(0x0a, from);
  return at < 0 ? bytes.length : at;
}

/** Reports the first hidden character of each line that has one. */
function reportHidden(source: Source, report: Report): boolean {
  let lastLine = 0;
  for (const match of source.text.matchAll(hidden)) {
    const place = placeAt(source, match.index);
    if (place.line === lastLine) continue;
    lastLine = place.line;
    const shown = { ...place, text: place.text.replace(hidden, '\uFFFD') };
    report(hiddenIn(match[0])!, shown);
  }
  return lastLine > 0;
}
