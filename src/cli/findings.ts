import type { Diagnostic, Severity } from '../core/diagnostic.ts';
import { showDiagnostic } from '../showing/terminal/diagnostic.ts';
import { fill, listed } from '../showing/text/fill.ts';
import { counts, outcomeWords } from '../words/outcomes.ts';
import type { Ink } from './ink.ts';

export function hasErrors(findings: readonly Diagnostic[]): boolean {
  return findings.some(({ severity }) => severity === 'error');
}

/** Each finding in full, a blank line after each. */
export function findingsText(findings: readonly Diagnostic[], ink: Ink): string {
  return findings.map((finding) => `${inked(showDiagnostic(finding), finding.severity, ink)}\n\n`).join('');
}

/** The underlining and the last line, which says how grave it is, in the colour of that. */
function inked(text: string, severity: Severity, ink: Ink): string {
  const lines = text.split('\n');
  return lines
    .map((line, index) =>
      /^\s*=+\s*$/.test(line) || index === lines.length - 1 ? ink.of(severity, line) : line,
    )
    .join('\n');
}

/** "2 errors and 1 warning." What there is none of is not named. */
export function sumText(findings: readonly Diagnostic[]): string {
  const sums = (['error', 'warning', 'note'] as const).flatMap((severity) => {
    const count = findings.filter((finding) => finding.severity === severity).length;
    return count === 0 ? [] : [counted(severity, count)];
  });
  return fill(outcomeWords.found, { findings: listed(sums) });
}

/** "1 guide", "12 guides". */
export function counted(noun: keyof typeof counts, n: number): string {
  return n === 1 ? counts[noun].one : fill(counts[noun].many, { n: String(n) });
}
