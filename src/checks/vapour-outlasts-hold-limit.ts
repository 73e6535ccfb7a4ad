import { stepHazards } from '../core/plan/scale/hazards.ts';
import { vapourMinutes } from '../core/plan/scale/step-times.ts';
import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './lookup/context.ts';
import { type HoldLimit, holdLimitsOf } from './lookup/hold-limits.ts';
import { timeText } from './lookup/written.ts';

/**
 * A hold limit that ends while flammable vapour still clears, before a step that is an ignition: no plan can keep both.
 * Where the wait alone breaks the limit, `hold-limit-broken` speaks of it.
 */
export const vapourOutlastsHoldLimit: Check = {
  code: 'vapour-outlasts-hold-limit',
  gravity: 'stops',
  find: (context) =>
    context.guidesInOrder.flatMap((read) => {
      const hazards = stepHazards(read.at, context.workspace);
      return holdLimitsOf(read, context)
        .filter(({ index, next }) => hazards[index]!.vapour && next.ignition)
        .filter(({ wait, handsOn, limit }) => wait + handsOn <= limit)
        .filter(({ step, handsOn, limit }) => vapourMinutes(step) + handsOn > limit)
        .map((held) => findingOf(held, read));
    }),
};

function findingOf({ index, step, next, limit, handsOn, at }: HoldLimit, read: GuideAtLevel): Finding {
  const following = read.at.steps.indexOf(next);
  return {
    places: [
      read.place('steps', index, 'clears-in'),
      at,
      read.key('steps', following, 'ignition'),
      read.place('steps', following, 'hands-on'),
    ],
    facts: {
      step: read.stepName(step.id),
      next: read.stepName(next.id),
      clears: timeText(vapourMinutes(step)),
      limit: timeText(limit),
      handsOn: timeText(handsOn),
    },
  };
}
