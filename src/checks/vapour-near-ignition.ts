import { stepHazards } from '../core/plan/scale/hazards.ts';
import type { Check } from './check.ts';
import { dangerousSteps } from './lookup/dangers.ts';

/** A step that is an ignition and uses what gives off flammable vapour: it cannot be kept apart from itself. */
export const vapourNearIgnition: Check = {
  code: 'vapour-near-ignition',
  gravity: 'stops',
  find: (context) =>
    context.guidesInOrder.flatMap((read) => {
      const hazards = stepHazards(read.at, context.workspace);
      return dangerousSteps(read, context)
        .filter(({ index }) => hazards[index]!.vapour && read.at.steps[index]!.ignition)
        .map(({ index, name, dangers, places: [, ...sources] }) => ({
          places: [read.key('steps', index, 'ignition'), ...sources] as const,
          facts: { step: name, dangers },
        }));
    }),
};
