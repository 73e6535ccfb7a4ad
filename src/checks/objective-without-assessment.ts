import { assessmentIds, assessmentsOf, judges } from './assessments.ts';
import type { Check } from './check.ts';

/** An objective of which nobody could tell whether it was reached. */
export const objectiveWithoutAssessment: Check = {
  code: 'objective-without-assessment',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) => {
      const known = assessmentIds(module);
      const isJudged = (objective: (typeof module.objectives)[number]): boolean =>
        objective.assessedBy.length > 0 || assessmentsOf(module).some((one) => judges(one, objective));
      return module.objectives.flatMap((objective, i) =>
        isJudged(objective)
          ? []
          : [
              {
                variant: known.length === 0 ? 'none' : undefined,
                places: [place('objectives', i, 'id')] as const,
                facts: { objective: objective.id, known: known.join(', ') },
              },
            ],
      );
    }),
};
