import type { Diagnostic } from '../diagnostic.ts';

/** Why a demand is not planned. No file is at fault, so it has no places. */
export function refusal(code: string, facts: Diagnostic['facts'], variant?: string): Diagnostic {
  return { code, ...(variant === undefined ? {} : { variant }), severity: 'error', places: [], facts };
}

/** What the reader of a plan should know. */
export function warning(code: string, facts: Diagnostic['facts'], variant?: string): Diagnostic {
  return { ...refusal(code, facts, variant), severity: 'warning' };
}
