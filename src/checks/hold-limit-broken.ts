import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './lookup/context.ts';
import { type HoldLimit, holdLimitsOf } from './lookup/hold-limits.ts';
import { timeText } from './lookup/written.ts';

/** A hold limit that nobody can keep: the wait alone, or with the hands-on of the next step, takes longer. */
export const holdLimitBroken: Check = {
  code: 'hold-limit-broken',
  gravity: 'stops',
  find: (context) =>
    context.guidesInOrder.flatMap((read) =>
      holdLimitsOf(read, context)
        .filter(({ wait, handsOn, limit }) => wait + handsOn > limit)
        .map((held) => findingOf(held, read)),
    ),
};

function findingOf({ index, step, next, limit, wait, handsOn, at }: HoldLimit, read: GuideAtLevel): Finding {
  return {
    variant: wait > limit ? undefined : wait > 0 ? 'hands-on' : 'no-wait',
    places: [
      read.place('steps', index, wait > 0 ? 'wait' : 'use-within'),
      at,
      read.place('steps', read.at.steps.indexOf(next), 'hands-on'),
    ],
    facts: {
      step: read.stepName(step.id),
      next: read.stepName(next.id),
      wait: timeText(wait),
      limit: timeText(limit),
      handsOn: timeText(handsOn),
    },
  };
}
