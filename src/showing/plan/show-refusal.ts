import type { Diagnostic } from '../../core/diagnostic.ts';
import { Bug } from '../../core/diagnostic.ts';
import { planRefusals } from '../../words/diagnostics/plan.ts';
import { capital, fill } from '../text/fill.ts';

/** Why a demand is not planned, as sentences for a reader. What to type instead is for the command line to say. */
export function showRefusal({ code, variant, facts }: Diagnostic): string {
  const words = planRefusals[variant === undefined ? code : `${code}.${variant}`] ?? planRefusals[code];
  if (!words) throw new Bug('a refusal has no sentence', { code, variant });
  const { says, why } = words;
  return [says, ...(why === undefined ? [] : [why])]
    .map((sentence) => capital(fill(sentence, facts)))
    .join(' ');
}
