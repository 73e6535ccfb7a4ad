import { isCollection, isMap, isScalar, visit, type Document, type YAMLError } from 'yaml';
import type { Place } from '../../core/diagnostic.ts';
import type { Report } from '../report.ts';
import type { Spot } from './sheet.ts';
import { placeOfLine, type Source } from '../text/source.ts';

/** Reports a key that stands twice in one set of keys, each time. */
export function reportRepeatedKeys(
  document: Document.Parsed,
  source: Source,
  spot: Spot,
  report: Report,
): boolean {
  const repeated = document.errors.filter(isRepeated);
  for (const error of repeated) reportRepeated(error, source, spot, report);
  return repeated.length > 0;
}

/** Reports what the YAML parser could not make sense of; the first fault alone, because what follows is mostly its echo. */
export function reportSyntax(document: Document.Parsed, source: Source, spot: Spot, report: Report): boolean {
  const faults = document.errors.filter((error) => !isRepeated(error));
  if (faults.length > 0) reportFirst(faults, document, spot, report);
  else if (!isMap(document.contents)) reportNoKeys(document, source, report);
  return faults.length > 0 || !isMap(document.contents);
}

const isRepeated = (error: YAMLError): boolean => error.code === 'DUPLICATE_KEY';

function reportNoKeys(document: Document.Parsed, source: Source, report: Report): void {
  const variant = document.contents === null ? 'empty' : 'no-keys';
  report({ code: 'front-matter-unreadable', variant, facts: { file: source.file } }, placeOfLine(source, 1));
}

/** What stands from the fault to the end of its line goes into the message: mostly it wants quotes. */
function reportFirst(
  faults: readonly YAMLError[],
  document: Document.Parsed,
  spot: Spot,
  report: Report,
): void {
  const from = Math.min(...faults.map(({ pos }) => pos[0]));
  const here = faults.filter(({ pos }) => pos[0] === from);
  const rule = rules.find(({ code, says }) =>
    here.some((fault) => fault.code === code && (!says || says.test(fault.message))),
  );
  const place = spot(rule?.opening ? lastOpened(document, rule.opening, from) : from, from + 1);
  const text = place.text.slice(place.column - 1).trim();
  const variant = variantAt(place, rule);
  const facts = { text, firstWord: text.split(/[\s:]/)[0]! };
  report(
    { code: 'front-matter-unreadable', ...(variant ? { variant } : {}), facts },
    { ...place, length: Math.max(1, text.length) },
  );
}

/** A tab before a line misleads the parser in many ways, and is what has to be told. */
function variantAt(place: Place, rule: Rule | undefined): string | undefined {
  if (/^[ -]*\t/.test(place.text)) return 'tab';
  return beginsLine(place) ? (rule?.atLineStart ?? rule?.variant) : rule?.variant;
}

/** Whether nothing but blanks and dashes stands before a place: then a key was meant there. */
const beginsLine = ({ text, column }: Place): boolean => /^[\s-]*$/.test(text.slice(0, column - 1));

/** Where the last quote or bracket before a fault was opened. */
function lastOpened(document: Document.Parsed, opening: 'quote' | 'bracket', before: number): number {
  let last = before;
  visit(document, {
    Node: (_, node) => {
      const isOne =
        opening === 'quote'
          ? isScalar(node) && node.type?.startsWith('QUOTE')
          : isCollection(node) && node.flow;
      if (isOne && node.range && node.range[0] < before) last = node.range[0];
    },
  });
  return last;
}

function reportRepeated(error: YAMLError, source: Source, spot: Spot, report: Report): void {
  const start = spot(...error.pos);
  const key = /^(?:"[^"]*"|'[^']*'|[^:,{}]*)/.exec(start.text.slice(start.column - 1))![0].trim();
  report(
    { code: 'repeated-key', facts: { key, file: source.file } },
    { ...start, length: Math.max(1, key.length) },
  );
}

interface Rule {
  readonly code: YAMLError['code'];
  /** Which of the parser's sentences, where the code has several. */
  readonly says?: RegExp;
  readonly variant: string;
  /** The variant where the fault begins its line. */
  readonly atLineStart?: string;
  /** Underline where this was opened, not where the parser gave up. */
  readonly opening?: 'quote' | 'bracket';
}

/** The parser's faults -> which of our sentences says it; the first that fits. */
const rules: readonly Rule[] = [
  { code: 'UNEXPECTED_TOKEN', says: /block-seq-ind/, variant: 'list-on-line', atLineStart: 'dash-for-key' },
  { code: 'MULTILINE_IMPLICIT_KEY', variant: 'two-lines', atLineStart: 'no-colon' },
  { code: 'BLOCK_AS_IMPLICIT_KEY', variant: 'colon-in-value' },
  { code: 'BAD_SCALAR_START', variant: 'quotes-wanted' },
  { code: 'BAD_DQ_ESCAPE', variant: 'backslash' },
  { code: 'TAB_AS_INDENT', variant: 'tab' },
  { code: 'MULTIPLE_DOCS', variant: 'several-documents' },
  { code: 'KEY_OVER_1024_CHARS', variant: 'long-key' },
  { code: 'MISSING_CHAR', says: /quote/, variant: 'quote', opening: 'quote' },
  { code: 'MISSING_CHAR', says: /Implicit map key/, variant: 'no-colon' },
  { code: 'MISSING_CHAR', says: /end with/, variant: 'unclosed', opening: 'bracket' },
  { code: 'BAD_INDENT', says: /end with/, variant: 'unclosed', opening: 'bracket' },
  { code: 'BAD_INDENT', variant: 'indent' },
  { code: 'MISSING_CHAR', says: /Sequence item/, variant: 'indent' },
  { code: 'UNEXPECTED_TOKEN', says: /flow-(seq|map)-end/, variant: 'extra-bracket' },
  { code: 'UNEXPECTED_TOKEN', says: /at node end/, variant: 'after-end' },
  { code: 'UNEXPECTED_TOKEN', says: /Unexpected , in flow/, variant: 'comma' },
  { code: 'TAG_RESOLVE_FAILED', variant: 'quotes-wanted' },
  { code: 'BLOCK_IN_FLOW', variant: 'unclosed', opening: 'bracket' },
  { code: 'BAD_DIRECTIVE', variant: 'directive' },
  { code: 'MISSING_CHAR', says: /directives-end/, variant: 'directive' },
];
