import { practiceIds } from './assessments.ts';
import type { Check } from './check.ts';

/** An objective that no station and no activity lets trainees practise. */
export const objectiveWithoutPractice: Check = {
  code: 'objective-without-practice',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) => {
      const known = practiceIds(module);
      return module.objectives.flatMap(({ id, practisedAt }, i) =>
        practisedAt.length > 0
          ? []
          : [
              {
                variant: known.length === 0 ? 'none' : undefined,
                places: [place('objectives', i, 'id')] as const,
                facts: { objective: id, known: known.join(', ') },
              },
            ],
      );
    }),
};
