import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { dangerousSteps } from './lookup/dangers.ts';
import { inWords } from './lookup/names.ts';

/**
 * A step whose text has a paragraph “Be careful”, and that no caution of the front matter names: only cautions stand at
 * the head of the page, of the plan and of its sheets. A text that links to a caution means that one; what
 * makes a step dangerous is told by `hazard-without-caution`.
 */
export const cautionInTextAlone: Check = {
  code: 'caution-in-text-alone',
  gravity: 'incomplete',
  find: (context) => context.guides.flatMap((read) => ofGuide(read, context)),
};

function ofGuide(read: GuideRead, context: Context): readonly Finding[] {
  const { steps, cautions, prose } = read.guide;
  const levels = context.levelsOf(read.guide);
  const dangerous = new Set(levels.flatMap((level) => dangerousSteps(level, context)).map(({ id }) => id));
  return steps.flatMap(({ id, heading = inWords(id) }, index): readonly Finding[] => {
    const place = prose.sections.findIndex(({ step, has }) => step === id && has.includes('be-careful'));
    const section = prose.sections[place];
    const isLinked = prose.links.some((link) => link.section === place && link.kind === 'caution');
    const isNamed = cautions.some((caution) => caution.steps.length === 0 || caution.steps.includes(id));
    if (!section || isLinked || isNamed || dangerous.has(id)) return [];
    const places = [read.place('steps', index, 'id'), read.prose(section.at)] as const;
    return [{ places, facts: { step: heading, id } }];
  });
}
