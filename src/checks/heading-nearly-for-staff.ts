import { seemsForStaff } from '../core/model/for-staff.ts';
import type { Check } from './check.ts';

/** A heading that speaks of instructors and is not the one that keeps its text from trainees. */
export const headingNearlyForStaff: Check = {
  code: 'heading-nearly-for-staff',
  gravity: 'doubtful',
  find: ({ modules }) =>
    modules.flatMap(({ module, prose }) =>
      module.prose.sections
        .filter(seemsForStaff)
        .map(({ heading, at }) => ({ places: [prose(at)] as const, facts: { heading } })),
    ),
};
