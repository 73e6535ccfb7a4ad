import { assessmentsOf } from './lookup/assessments.ts';
import type { Check } from './check.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** An objective that an item, a rating or a question names, and that its module does not have. */
export const unknownObjective: Check = {
  code: 'unknown-objective',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap((read) => {
      const named = assessmentsOf(read.module).flatMap(({ kind, id, says, objectives, way }) =>
        namedIn(read, objectives, the(kind, id ?? says), ...way, 'objectives'),
      );
      return unknownNames(
        named,
        read.module.objectives.map(({ id }) => id),
      );
    }),
};
