import { isMap, type Document, type YAMLError } from 'yaml';
import type { Report } from './report.ts';
import type { Spot } from './sheet.ts';
import { placeOfLine, type Source } from './source.ts';

/** Reports a key that stands twice in one set of keys, each time. */
export function reportRepeatedKeys(document: Document.Parsed, source: Source, spot: Spot, report: Report): boolean {
  const repeated = document.errors.filter(isRepeated);
  for (const error of repeated) reportRepeated(error, source, spot, report);
  return repeated.length > 0;
}

/** Reports what the YAML parser could not make sense of; the first fault alone, because what follows is mostly its echo. */
export function reportSyntax(document: Document.Parsed, source: Source, spot: Spot, report: Report): boolean {
  const faults = document.errors.filter((error) => !isRepeated(error));
  if (faults.length > 0) reportFirst(faults, spot, report);
  else if (!isMap(document.contents)) reportNoKeys(document, source, report);
  return faults.length > 0 || !isMap(document.contents);
}

const isRepeated = (error: YAMLError): boolean => error.code === 'DUPLICATE_KEY';

function reportNoKeys(document: Document.Parsed, source: Source, report: Report): void {
  const variant = document.contents === null ? 'empty' : 'no-keys';
  report({ code: 'front-matter-unreadable', variant, facts: { file: source.file } }, placeOfLine(source, 1));
}

/** What stands from the fault to the end of its line goes into the message: mostly it wants quotes. */
function reportFirst(errors: readonly YAMLError[], spot: Spot, report: Report): void {
  const from = Math.min(...errors.map(({ pos }) => pos[0]));
  const here = errors.filter(({ pos }) => pos[0] === from);
  const wording = rules.find(({ code, says }) => here.some((error) => error.code === code && (!says || says.test(error.message))));
  const place = spot(from, from + 1);
  const text = place.text.slice(place.column - 1).trim();
  const variant = wording ? { variant: wording.variant } : {};
  report({ code: 'front-matter-unreadable', ...variant, facts: { text, firstWord: text.split(/[\s:]/)[0]! } }, { ...place, length: Math.max(1, text.length) });
}

function reportRepeated(error: YAMLError, source: Source, spot: Spot, report: Report): void {
  const start = spot(...error.pos);
  const key = /^(?:"[^"]*"|'[^']*'|[^:,{}]*)/.exec(start.text.slice(start.column - 1))![0].trim();
  report({ code: 'repeated-key', facts: { key, file: source.file } }, { ...start, length: Math.max(1, key.length) });
}

/** The parser's faults -> which of our sentences says it; the first that fits. */
const rules: readonly { readonly code: YAMLError['code']; readonly says?: RegExp; readonly variant: string }[] = [
  { code: 'MULTILINE_IMPLICIT_KEY', variant: 'two-lines' },
  { code: 'BLOCK_AS_IMPLICIT_KEY', variant: 'colon-in-value' },
  { code: 'BAD_SCALAR_START', variant: 'quotes-wanted' },
  { code: 'BAD_DQ_ESCAPE', variant: 'backslash' },
  { code: 'TAB_AS_INDENT', variant: 'tab' },
  { code: 'MULTIPLE_DOCS', variant: 'several-documents' },
  { code: 'KEY_OVER_1024_CHARS', variant: 'long-key' },
  { code: 'MISSING_CHAR', says: /quote/, variant: 'quote' },
  { code: 'MISSING_CHAR', says: /Implicit map key/, variant: 'no-colon' },
  { code: 'MISSING_CHAR', says: /end with/, variant: 'unclosed' },
  { code: 'BAD_INDENT', says: /end with/, variant: 'unclosed' },
  { code: 'BAD_INDENT', variant: 'indent' },
  { code: 'BLOCK_IN_FLOW', variant: 'unclosed' },
  { code: 'UNEXPECTED_TOKEN', says: /block-seq-ind/, variant: 'list-on-line' },
];
