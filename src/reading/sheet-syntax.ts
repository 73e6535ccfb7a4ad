import { isMap, type Document, type YAMLError } from 'yaml';
import type { Report } from './report.ts';
import type { Spot } from './sheet.ts';
import { placeOfLine, type Source } from './source.ts';

/**
 * Reports what the YAML parser could not make sense of. A repeated key is reported each time; of the rest only the
 * first, because what follows is mostly its echo.
 */
export function reportSyntax(document: Document.Parsed, source: Source, spot: Spot, report: Report): boolean {
  const repeated = document.errors.filter((error) => error.code === 'DUPLICATE_KEY');
  for (const error of repeated) reportRepeated(error, source, spot, report);
  const first = document.errors.find((error) => error.code !== 'DUPLICATE_KEY');
  if (first) report({ code: 'front-matter-unreadable', variant: wordings[first.code] ?? 'other', facts: {} }, spot(...first.pos));
  if (document.errors.length > 0) return true;
  if (isMap(document.contents)) return false;
  const variant = document.contents === null ? 'empty' : 'no-keys';
  report({ code: 'front-matter-unreadable', variant, facts: { file: source.file } }, placeOfLine(source, 1));
  return true;
}

function reportRepeated(error: YAMLError, source: Source, spot: Spot, report: Report): void {
  const start = spot(...error.pos);
  const key = /^(?:"[^"]*"|'[^']*'|[^:,{}]*)/.exec(start.text.slice(start.column - 1))![0].trim();
  report({ code: 'repeated-key', facts: { key, file: source.file } }, { ...start, length: Math.max(1, key.length) });
}

/** The parser's codes -> which of our sentences says it. */
const wordings: Readonly<Partial<Record<YAMLError['code'], string>>> = {
  BAD_DQ_ESCAPE: 'backslash',
  BAD_INDENT: 'unclosed',
  BAD_SCALAR_START: 'quotes-wanted',
  BLOCK_AS_IMPLICIT_KEY: 'colon-in-value',
  BLOCK_IN_FLOW: 'unclosed',
  KEY_OVER_1024_CHARS: 'long-key',
  MISSING_CHAR: 'something-missing',
  MULTILINE_IMPLICIT_KEY: 'colon-in-value',
  MULTIPLE_DOCS: 'several-documents',
  TAB_AS_INDENT: 'tab',
  UNEXPECTED_TOKEN: 'unexpected',
};
