import { practiceIds } from './lookup/assessments.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/** An objective that no station and no activity lets trainees practise. */
export const objectiveWithoutPractice: Check = {
  code: 'objective-without-practice',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap(ofModule),
};

function ofModule({ module, place }: ModuleRead): readonly Finding[] {
  const known = practiceIds(module);
  return module.objectives.flatMap(({ id, practisedAt }, i): readonly Finding[] => {
    if (practisedAt.length > 0) return [];
    const facts = { objective: id, known: known.join(', ') };
    return [
      { variant: known.length === 0 ? 'none' : undefined, places: [place('objectives', i, 'id')], facts },
    ];
  });
}
