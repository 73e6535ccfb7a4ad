import type { StepAt } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './context.ts';
import { quoted } from './written.ts';

/** Steps that come after each other, so that none can be the first. */
export const stepsInACircle: Check = {
  code: 'steps-in-a-circle',
  gravity: 'stops',
  find: ({ guidesAt }) => guidesAt.flatMap(ofGuide),
};

function ofGuide(read: GuideAtLevel): readonly Finding[] {
  const told = new Set<string>();
  return read.at.steps.flatMap((step) => {
    const circle = told.has(step.id) ? undefined : circleFrom(step, read.at.steps);
    circle?.forEach(({ id }) => told.add(id));
    return circle ? [finding(read, circle)] : [];
  });
}

/** The shortest way from a step back to itself over what each comes after; `undefined` where there is none. */
function circleFrom(start: StepAt, steps: readonly StepAt[]): readonly [StepAt, ...StepAt[]] | undefined {
  const ways: [StepAt, ...StepAt[]][] = [[start]];
  const seen = new Set<string>();
  for (const way of ways) {
    for (const before of steps.filter(({ id }) => way.at(-1)!.after.includes(id))) {
      if (before === start) return way;
      if (!seen.has(before.id)) ways.push([...way, before]);
      seen.add(before.id);
    }
  }
  return undefined;
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
