import type { Program } from '../../core/model/program.ts';
import { safetyWords as words } from '../../words/safety.ts';
import { properly } from '../text/author-text.ts';
import { fill } from '../text/fill.ts';

/** Who has the last word, and whom to ask: it stands wherever cautions or dangers stand together. */
export interface Deferral {
  readonly inFull: string;
  /** For a step, of which the whole sentence stands above all steps. */
  readonly atStep: string;
}

/** Policy, data sheet, guide, in this order. A program that names nobody sends to those in charge of safety. */
export function deferral({ policy }: Pick<Program, 'policy'>): Deferral {
  const contact = properly(policy?.contact ?? words.whoeverAnswers);
  return { inFull: fill(words.defers, { contact }), atStep: fill(words.defersAtStep, { contact }) };
}
