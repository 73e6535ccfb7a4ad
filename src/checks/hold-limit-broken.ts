import { referenceClock } from '../core/plan/time/clock.ts';
import { handsOnMinutes, holdLimits, waitMinutes } from '../core/plan/scale/step-times.ts';
import type { StepAt } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './context.ts';
import { directionsNamed } from './usage.ts';
import { timeText } from './written.ts';

/** A hold limit that nobody can keep: the wait alone, or with the hands-on of the next step, takes longer. */
export const holdLimitBroken: Check = {
  code: 'hold-limit-broken',
  gravity: 'stops',
  find: (context) =>
    context.guidesInOrder.flatMap((read) =>
      read.at.steps.flatMap((step, index) => ofStep(read, step, index, context)),
    ),
};

function ofStep(read: GuideAtLevel, step: StepAt, index: number, { workspace }: Context): readonly Finding[] {
  const isTold = directionsNamed(step).every(
    ({ material, time }) => workspace.materials[material]?.times[time],
  );
  if (!isTold) return [];
  const wait = waitMinutes(step, workspace, referenceClock(workspace.program));
  const following = read.at.steps.filter(({ after }) => after.includes(step.id));
  return [...holdLimits(read.at, step)].flatMap(([id, limit]) => {
    const next = following.find((one) => one.id === id);
    const handsOn = next ? handsOnMinutes(next, 1) : 0;
    if (!next || wait + handsOn <= limit) return [];
    const isOfOne = Object.hasOwn(step.useWithin.byStep, id);
    const limitAt = isOfOne
      ? read.place('steps', index, 'use-within', id)
      : read.place('steps', index, 'use-within');
    return [
      {
        variant: wait > limit ? undefined : wait > 0 ? 'hands-on' : 'no-wait',
        places: [
          read.place('steps', index, wait > 0 ? 'wait' : 'use-within'),
          limitAt,
          read.place('steps', read.at.steps.indexOf(next), 'hands-on'),
        ] as const,
        facts: {
          step: read.stepName(step.id),
          next: read.stepName(id),
          wait: timeText(wait),
          limit: timeText(limit),
          handsOn: timeText(handsOn),
        },
      },
    ];
  });
}
