import type { Diagnostic, Place, Severity } from '../core/diagnostic.ts';

/**
 * Findings for other programs: `benchwright-findings/1`, in the order that they are given in.
 *
 * @param say  The whole message of a finding, as people read it.
 */
export function findingsJson(findings: readonly Diagnostic[], say: (finding: Diagnostic) => string) {
  return {
    format: 'benchwright-findings/1',
    counts: {
      error: count(findings, 'error'),
      warning: count(findings, 'warning'),
      note: count(findings, 'note'),
    },
    findings: findings.map((finding) => ({
      code: finding.code,
      ...(finding.variant ? { variant: finding.variant } : {}),
      severity: finding.severity,
      places: finding.places.map(placeJson),
      message: say(finding),
    })),
  };
}

function count(findings: readonly Diagnostic[], severity: Severity): number {
  return findings.filter((finding) => finding.severity === severity).length;
}

function placeJson({ file, line, column, length }: Place) {
  return { file, line, column, length };
}
