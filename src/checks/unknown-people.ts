import type { Check } from './check.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** People that a survey asks, and that the cohort of its module does not have. */
export const unknownPeople: Check = {
  code: 'unknown-people',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap((read) => {
      const named = read.module.surveys.flatMap(({ id, of }, i) =>
        namedIn(read, of, the('survey question', id), 'surveys', 'items', i, 'of'),
      );
      return unknownNames(
        named,
        read.module.cohort.people.map(({ id }) => id),
      );
    }),
};
