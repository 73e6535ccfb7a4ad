import { assessmentIds } from './lookup/assessments.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/** A survey question named as what judges an objective: how sure somebody feels is not what they can do. */
export const confidenceAsAssessment: Check = {
  code: 'confidence-as-assessment',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap(ofModule),
};

function ofModule({ module, place }: ModuleRead): readonly Finding[] {
  const known = assessmentIds(module);
  const asked = module.surveys.map(({ id }) => id).filter((id) => !known.includes(id));
  return module.objectives.flatMap(({ id, assessedBy }, i) =>
    assessedBy.flatMap((survey, j): readonly Finding[] => {
      if (!asked.includes(survey)) return [];
      const facts = { objective: id, survey, known: known.join(', ') };
      return [{ places: [place('objectives', i, 'assessed-by', j)], facts }];
    }),
  );
}
