import type { Check } from './check.ts';
import { dangerousSteps } from './lookup/dangers.ts';

/** A dangerous step that names nothing to keep people from harm. */
export const hazardWithoutControl: Check = {
  code: 'hazard-without-control',
  gravity: 'stops',
  find: (context) =>
    context.guidesInOrder.flatMap((read) =>
      dangerousSteps(read, context)
        .filter(({ index }) => read.at.steps[index]!.controls.length === 0)
        .map(({ name, dangers, places }) => ({ places, facts: { step: name, dangers } })),
    ),
};
