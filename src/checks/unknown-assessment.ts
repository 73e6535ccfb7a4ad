import { assessmentIds } from './lookup/assessments.ts';
import type { Check } from './check.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** What an objective says that it is assessed by, and that is no item, rating or question of its module. */
export const unknownAssessment: Check = {
  code: 'unknown-assessment',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap((read) => {
      const { objectives, surveys } = read.module;
      const known = assessmentIds(read.module);
      const isSurvey = (name: string): boolean => surveys.some(({ id }) => id === name);
      const named = objectives.flatMap(({ id, assessedBy }, i) =>
        namedIn(read, assessedBy, the('objective', id), 'objectives', i, 'assessed-by'),
      );
      return unknownNames(named, known, (name) => known.includes(name) || isSurvey(name));
    }),
};
