import { Bug } from '../../diagnostic.ts';
import type { GuideAt, WaitTime } from '../../model/guide.ts';
import type { Duration } from '../../model/values.ts';
import type { Workspace } from '../../model/workspace.ts';
import { exact } from '../../quantity/exact.ts';
import { minutesOf, minutesUp, secondsOf } from '../../time/minutes.ts';
import { type Clock, limitMinutes } from '../time/clock.ts';
import type { StepAt } from './step-uses.ts';

/** Minutes of hands-on of one run: once, and for each model in it; rounded up once. */
export function handsOnMinutes({ handsOn: { once, each } }: StepAt, models: number): number {
  return minutesUp(secondsOf(once).add(secondsOf(each).mul(exact(models))));
}

/** Minutes of the wait after one run, at its longest in the program's rooms; 0 where there is none. */
export function waitMinutes(step: StepAt, { program, materials }: Workspace, clock: Clock): number {
  if (!step.wait) return 0;
  const { usual, ifRoom } = step.wait;
  const times = [usual, ...program.room.map((condition) => ifRoom[condition])].filter(
    (time) => time !== undefined,
  );
  const starts = step.people === 0 ? 'any-time' : 'in-hours';
  return Math.max(...times.map((time) => clock.atMost(lengthOf(time, materials), starts)));
}

/** A wait may be the time that a material's own directions give. */
function lengthOf(time: WaitTime, materials: Workspace['materials']): Duration {
  if (!('material' in time)) return time;
  const length = materials[time.material]?.times[time.time];
  if (!length) throw new Bug('a wait names a time that its material has not', { ...time });
  return length;
}

/**
 * Hold limits of a step, by the step that they bind: its hands-on has ended so many minutes after hands left this one.
 * What is said of one step counts there instead of what is said of any next one.
 */
export function holdLimits(at: GuideAt, step: StepAt): ReadonlyMap<string, number> {
  const { any, byStep } = step.useWithin;
  const next = at.steps.filter(({ after }) => after.includes(step.id)).map(({ id }) => id);
  const ofAny = any ? next.map((id) => [id, limitMinutes(any)] as const) : [];
  const ofOne = Object.entries(byStep).map(([id, limit]) => [id, limitMinutes(limit)] as const);
  return new Map([...ofAny, ...ofOne]);
}

export function vapourMinutes(step: StepAt): number {
  return step.clearsIn ? minutesOf(step.clearsIn) : 0;
}
