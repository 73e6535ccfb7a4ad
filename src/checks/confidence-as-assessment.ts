import { assessmentIds } from './assessments.ts';
import type { Check } from './check.ts';

/** A survey question named as what judges an objective: how sure somebody feels is not what they can do. */
export const confidenceAsAssessment: Check = {
  code: 'confidence-as-assessment',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) => {
      const known = assessmentIds(module);
      const asked = module.surveys.map(({ id }) => id).filter((id) => !known.includes(id));
      return module.objectives.flatMap(({ id, assessedBy }, i) =>
        assessedBy.flatMap((name, j) =>
          asked.includes(name)
            ? [
                {
                  places: [place('objectives', i, 'assessed-by', j)] as const,
                  facts: { objective: id, survey: name, known: known.join(', ') },
                },
              ]
            : [],
        ),
      );
    }),
};
