import type { Diagnostic, Place } from '../core/diagnostic.ts';

/** What is wrong, before its place is known. The problems that core's readers return are of this shape. */
export type Fault = Pick<Diagnostic, 'code' | 'variant' | 'facts'>;

/** Takes note of one thing that is wrong, most telling place first. */
export type Report = (fault: Fault, ...places: readonly Place[]) => void;

/** A report and all that was reported through it. */
export function makeReport(): { readonly report: Report; readonly found: readonly Diagnostic[] } {
  const found: Diagnostic[] = [];
  return { found, report: (fault, ...places) => found.push({ ...fault, severity: 'error', places }) };
}

/** By file, line and column, then by code: the order in which an author mends a folder. */
export function inReadingOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return [...diagnostics].sort((a, b) => byPlace(a.places[0], b.places[0]) || compareText(a.code, b.code));
}

function byPlace(a: Place | undefined, b: Place | undefined): number {
  if (!a || !b) return Number(Boolean(a)) - Number(Boolean(b));
  return compareText(a.file, b.file) || a.line - b.line || a.column - b.column;
}

/** By code unit: the same order on every machine. */
function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
