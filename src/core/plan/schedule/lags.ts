import type { Lag } from '../../solve/schedule/problem.ts';
import type { WaitJob, Jobs } from './jobs.ts';
import type { Line } from '../demand/line.ts';
import { modelsServed, sharedRuns } from '../scale/runs.ts';
import { holdLimits } from '../scale/step-times.ts';
import type { StepAt } from '../scale/step-uses.ts';

/**
 * What must come before what, and how soon after.
 *
 * A run begins when every run before it that shares a model has waited its time; where hands must have left it in
 * time, its end is bound to theirs.
 */
export function lagsOf(lines: readonly Line[], jobs: Jobs): readonly Lag[] {
  const between = lines.flatMap((line, index) =>
    line.at.steps.flatMap((step) => [
      ...orderLags(line, index, step, jobs),
      ...limitLags(line, index, step, jobs),
    ]),
  );
  return [...between, ...jobs.waits.flatMap(waitLags)];
}

function orderLags({ at, made }: Line, line: number, step: StepAt, jobs: Jobs): Lag[] {
  const before = at.steps.filter(({ id }) => step.after.includes(id));
  return before.flatMap((other) =>
    pairs(at, other, step, made).flatMap(([first, then]): Lag[] => {
      const [from, to] = [jobs.handsOn(line, other.id, first), jobs.handsOn(line, step.id, then)];
      return jobs.runs[to]!.past ? [] : [[from, to, jobs.runs[from]!.wait, 'end', 'start']];
    }),
  );
}

/** Hands are off the later run at most so many minutes after they are off the earlier one; of a past one nobody knows. */
function limitLags({ at, made }: Line, line: number, step: StepAt, jobs: Jobs): Lag[] {
  const limits = holdLimits(at, step);
  const bound = at.steps.filter(({ id }) => limits.has(id));
  return bound.flatMap((other) =>
    pairs(at, step, other, made).flatMap(([first, then]): Lag[] => {
      const [from, to] = [jobs.handsOn(line, step.id, first), jobs.handsOn(line, other.id, then)];
      const isOver = jobs.runs[from]!.past || jobs.runs[to]!.past;
      return isOver ? [] : [[to, from, -limits.get(other.id)!, 'end', 'end']];
    }),
  );
}

/** Runs of two steps that share a model. */
function pairs(
  at: Line['at'],
  first: StepAt,
  then: StepAt,
  made: number,
): readonly (readonly [number, number])[] {
  return sharedRuns(modelsServed(at, first.for, made), modelsServed(at, then.for, made), made);
}

/** A wait begins when hands leave; where it is watched, or an ignition, no later either. */
function waitLags({ job, of, atOnce }: WaitJob): Lag[] {
  const notBefore: Lag = [of, job, 0, 'end', 'start'];
  const notAfter: Lag = [job, of, 0, 'start', 'end'];
  return atOnce ? [notBefore, notAfter] : [notBefore];
}
