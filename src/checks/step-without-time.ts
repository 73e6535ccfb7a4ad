import type { Duration } from '../core/model/values.ts';
import type { StepAt } from '../core/plan/scale/step-uses.ts';
import type { Check } from './check.ts';

/** A step that takes nobody's time and waits for nothing: the plan would pass over it. */
export const stepWithoutTime: Check = {
  code: 'step-without-time',
  gravity: 'incomplete',
  find: (context) =>
    context.guidesAt.flatMap((read) =>
      read.at.steps.flatMap((step, index) =>
        takesTime(step)
          ? []
          : [{ places: [read.place('steps', index)], facts: { step: read.stepName(step.id) } }],
      ),
    ),
};

function takesTime({ handsOn, wait }: StepAt): boolean {
  return wait !== undefined || isLong(handsOn.once) || isLong(handsOn.each);
}

function isLong(time: Duration): boolean {
  return 'workingDays' in time ? time.workingDays > 0 : time.seconds !== '0';
}
