import { leadingTo } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './lookup/context.ts';

/** A hold limit that binds nothing: no step follows, or the one that it names does not come after. */
export const holdLimitWithoutNext: Check = {
  code: 'hold-limit-without-next',
  gravity: 'incomplete',
  find: ({ guidesInOrder }) =>
    guidesInOrder.flatMap((read) => read.at.steps.flatMap((_, index) => ofStep(read, index))),
};

function ofStep(read: GuideAtLevel, index: number): readonly Finding[] {
  const { steps } = read.at;
  const { id, useWithin } = steps[index]!;
  const facts = { step: read.stepName(id), id };
  const named = Object.keys(useWithin.byStep).flatMap((next) => {
    if (!steps.some((step) => step.id === next) || isAfter(read, next, id)) return [];
    const places = [read.key('steps', index, 'use-within', next)] as const;
    return [{ variant: 'step', places, facts: { ...facts, next: read.stepName(next) } }];
  });
  const isFollowed = steps.some(({ after }) => after.includes(id));
  if (!useWithin.any || isFollowed) return named;
  return [{ places: [read.place('steps', index, 'use-within')], facts }, ...named];
}

function isAfter({ at }: GuideAtLevel, step: string, before: string): boolean {
  return step !== before && leadingTo(at, step).has(before);
}
