import type { Place } from '../../core/diagnostic.ts';
import { referenceClock } from '../../core/plan/time/clock.ts';
import { handsOnMinutes, holdLimits, waitMinutes } from '../../core/plan/scale/step-times.ts';
import type { StepAt } from '../../core/plan/scale/step-uses.ts';
import type { Context, GuideAtLevel } from './context.ts';
import { directionsNamed } from './usage.ts';

/** What a hold limit leaves time for: hands off one step, its wait, hands off a step right after it. In minutes. */
export interface HoldLimit {
  /** Of the step that sets it. */
  readonly index: number;
  readonly step: StepAt;
  readonly next: StepAt;
  readonly limit: number;
  readonly wait: number;
  /** Of the next step, for a single model. */
  readonly handsOn: number;
  /** Where the limit is written. */
  readonly at: Place;
}

/** The hold limits of a guide whose waits are known: that of a product's directions may be missing. */
export function holdLimitsOf(read: GuideAtLevel, { workspace }: Context): readonly HoldLimit[] {
  const { steps } = read.at;
  return steps.flatMap((step, index) => {
    const isTold = directionsNamed(step).every(
      ({ material, time }) => workspace.materials[material]?.times[time],
    );
    if (!isTold) return [];
    const wait = waitMinutes(step, workspace, referenceClock(workspace.program));
    return [...holdLimits(read.at, step)].flatMap(([id, limit]) => {
      const next = steps.find((one) => one.id === id && one.after.includes(step.id));
      if (!next) return [];
      return [
        { index, step, next, limit, wait, handsOn: handsOnMinutes(next, 1), at: placeOf(id, index, read) },
      ];
    });
  });
}

function placeOf(next: string, index: number, read: GuideAtLevel): Place {
  const isOfOne = Object.hasOwn(read.at.steps[index]!.useWithin.byStep, next);
  return read.place('steps', index, 'use-within', ...(isOfOne ? [next] : []));
}
