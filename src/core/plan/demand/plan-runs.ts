import type { Workspace } from '../../model/workspace.ts';
import type { Clock } from '../time/clock.ts';
import type { Line } from './line.ts';
import { modelsServed, runsOf } from '../scale/runs.ts';
import { handsOnMinutes, waitMinutes } from '../scale/step-times.ts';
import type { StepAt } from '../scale/step-uses.ts';

/** One carrying-out of a step of a line. Runs stand in the order of lines, steps and models. */
export interface Run {
  readonly line: number;
  readonly step: StepAt;
  /** From 0. */
  readonly run: number;
  readonly models: readonly number[];
  /** Minutes of hands-on. */
  readonly handsOn: number;
  readonly wait: number;
  /** Nobody is needed for no time at all. */
  readonly people: number;
  /** All its models are past it: it takes no time, nobody and nothing, and is told nowhere. */
  readonly past: boolean;
}

export function runsOfPlan(lines: readonly Line[], workspace: Workspace, clock: Clock): readonly Run[] {
  return lines.flatMap(({ at, made, past }, line) =>
    at.steps.flatMap((step, index) => {
      const wait = waitMinutes(step, workspace, clock);
      const runs = runsOf(modelsServed(at, step.for, made), made);
      const [full, last] = [runs[0], runs.at(-1)].map(
        (models) => models && handsOnMinutes(step, models.length),
      );
      return runs.map((models, run) => {
        const isPast = models[0]! <= past[index]!;
        const handsOn = isPast ? 0 : run < runs.length - 1 ? full! : last!;
        const people = handsOn > 0 ? step.people : 0;
        return { line, step, run, models, handsOn, wait: isPast ? 0 : wait, people, past: isPast };
      });
    }),
  );
}

/** Person-minutes of hands-on. */
export function personMinutes(runs: readonly Run[]): number {
  return runs.reduce((sum, { handsOn, people }) => sum + handsOn * people, 0);
}
