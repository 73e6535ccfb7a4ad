import type { Diagnostic } from '../diagnostic.ts';
import type { Rational } from '../model/values.ts';

/** Why a demand is not planned. No file is at fault, so it has no places. */
export function refusal(code: string, facts: Diagnostic['facts'], variant?: string): Diagnostic {
  return { code, ...(variant === undefined ? {} : { variant }), severity: 'error', places: [], facts };
}

/** What the reader of a plan should know. */
export function warning(code: string, facts: Diagnostic['facts'], variant?: string): Diagnostic {
  return { ...refusal(code, facts, variant), severity: 'warning' };
}

/** A minute of the plan's clock as a fact: `@1440`. */
export function momentFact(minute: number): string {
  return `@${minute}`;
}

/** A length of time as a fact: `90 min`. */
export function minutesFact(minutes: number): string {
  return `${minutes} min`;
}

/** Calendar months as a fact, by the code of UCUM (from memory): `6 mo`. */
export function monthsFact(months: Rational): string {
  return `${months} mo`;
}
