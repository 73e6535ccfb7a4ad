import { assessmentIds, assessmentsOf, judges } from './lookup/assessments.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/** An objective of which nobody could tell whether it was reached. */
export const objectiveWithoutAssessment: Check = {
  code: 'objective-without-assessment',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap(ofModule),
};

function ofModule({ module, place }: ModuleRead): readonly Finding[] {
  const known = assessmentIds(module);
  return module.objectives.flatMap((objective, i): readonly Finding[] => {
    const isJudged = assessmentsOf(module).some((one) => judges(one, objective));
    if (isJudged || objective.assessedBy.length > 0) return [];
    const facts = { objective: objective.id, known: known.join(', ') };
    return [
      { variant: known.length === 0 ? 'none' : undefined, places: [place('objectives', i, 'id')], facts },
    ];
  });
}
