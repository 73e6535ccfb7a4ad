import type { GuideAt } from '../../core/model/guide.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { referenceClock } from '../../core/plan/time/clock.ts';
import { holdLimits, vapourMinutes, waitMinutes } from '../../core/plan/scale/step-times.ts';
import { tickTimeWords } from '../../words/tick-times.ts';
import { fill } from '../text/fill.ts';
import { stepName } from '../text/names.ts';
import type { TickTime } from '../shown/shown-plan.ts';

type StepAt = GuideAt['steps'][number];

/**
 * What follows from the moment a step was done: when the next may begin, by when hands must be off it, how long vapour
 * stays.
 */
export function showTickTimes(step: StepAt, at: GuideAt, workspace: Workspace): readonly TickTime[] {
  const wait = waitMinutes(step, workspace, referenceClock(workspace.program));
  const vapour = vapourMinutes(step);
  return [
    ...(wait > 0 ? [{ minutes: wait, rounds: 'up', says: tickTimeWords.notBefore } as const] : []),
    ...limitTimes(step, at),
    ...(vapour > 0 ? [{ minutes: vapour, rounds: 'up', says: tickTimeWords.clears } as const] : []),
  ];
}

/** One sentence where one limit binds whatever comes next; else one for each step that is bound. */
function limitTimes(step: StepAt, at: GuideAt): readonly TickTime[] {
  const limits = [...holdLimits(at, step)];
  const isOne = new Set(limits.map(([, minutes]) => minutes)).size === 1 && step.useWithin.any !== undefined;
  return (isOne ? limits.slice(0, 1) : limits).map(([next, minutes]) => ({
    minutes,
    rounds: 'down',
    says: isOne
      ? tickTimeWords.limit
      : fill<string>(tickTimeWords.limitBefore, { step: stepName(at, next), time: '{time}' }),
  }));
}
