import type { StepAt } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import { circlesIn } from './lookup/circles.ts';
import type { GuideAtLevel } from './lookup/context.ts';
import { quoted } from './lookup/written.ts';

/** Steps that come after each other, so that none can be the first. */
export const stepsInACircle: Check = {
  code: 'steps-in-a-circle',
  gravity: 'stops',
  find: ({ guidesAt }) => guidesAt.flatMap(ofGuide),
};

function ofGuide(read: GuideAtLevel): readonly Finding[] {
  return circlesIn(read.at.steps).map((circle) => finding(read, circle));
}

function finding(read: GuideAtLevel, circle: readonly [StepAt, ...StepAt[]]): Finding {
  const [first, ...others] = circle.map(({ id }) => read.at.steps.findIndex((step) => step.id === id));
  const place = (index: number) => read.place('steps', index, 'after');
  const around = [...circle, circle[0]].reverse().map(({ id }) => read.stepName(id));
  return {
    variant: circle.length === 1 ? 'itself' : undefined,
    places: [place(first!), ...others.map(place)],
    facts: { step: read.stepName(circle[0].id), steps: quoted(around.slice(1)) },
  };
}
