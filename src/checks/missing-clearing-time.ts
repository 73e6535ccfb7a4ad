import { stepHazards } from '../core/plan/scale/hazards.ts';
import type { Check } from './check.ts';
import { dangerousSteps } from './lookup/dangers.ts';

/** A step with flammable vapour of which nobody says how long it takes to clear: a flame could follow at once. */
export const missingClearingTime: Check = {
  code: 'missing-clearing-time',
  gravity: 'incomplete',
  find: (context) =>
    context.guidesInOrder.flatMap((read) => {
      const hazards = stepHazards(read.at, context.workspace);
      return dangerousSteps(read, context)
        .filter(({ index }) => hazards[index]!.vapour && !read.at.steps[index]!.clearsIn)
        .map(({ name, dangers, places }) => ({ places, facts: { step: name, dangers } }));
    }),
};
