import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './lookup/context.ts';
import { dangerousSteps, type DangerousStep } from './lookup/dangers.ts';

/** A dangerous step that no caution names, or only a notice, which speaks of damage to things. */
export const hazardWithoutCaution: Check = {
  code: 'hazard-without-caution',
  gravity: 'stops',
  find: (context) =>
    context.guidesInOrder.flatMap((read) =>
      dangerousSteps(read, context).flatMap((step) => ofStep(read, step)),
    ),
};

function ofStep(
  { at, place }: GuideAtLevel,
  { id, name, dangers, places }: DangerousStep,
): readonly Finding[] {
  const naming = at.cautions.filter(({ steps }) => steps.includes(id));
  if (naming.some(({ signal }) => signal !== 'notice')) return [];
  const facts = { step: name, id, dangers };
  const [notice] = naming;
  if (!notice) return [{ places, facts }];
  const signal = place('cautions', at.cautions.indexOf(notice), 'signal');
  return [{ variant: 'notice', places: [signal, ...places], facts: { ...facts, notice: notice.id } }];
}
