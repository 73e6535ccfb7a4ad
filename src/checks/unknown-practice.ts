import { practiceIds } from './lookup/assessments.ts';
import type { Check } from './check.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** A place of practice that an objective names, and that is no station or activity of its module. */
export const unknownPractice: Check = {
  code: 'unknown-practice',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap((read) => {
      const named = read.module.objectives.flatMap(({ id, practisedAt }, i) =>
        namedIn(read, practisedAt, the('objective', id), 'objectives', i, 'practised-at'),
      );
      return unknownNames(named, practiceIds(read.module));
    }),
};
