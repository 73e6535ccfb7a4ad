import type { Guide, GuideAt } from '../../model/guide.ts';
import { usualLevel } from '../../model/plan-at.ts';
import type { Finished } from '../demand.ts';
import { modelsServed } from '../scale/runs.ts';
import { type StepAt, leadingTo } from '../scale/step-uses.ts';

/** What is there already of the models of one line. */
export interface ReadyMade {
  /** Ready to use. */
  readonly ready: number;
  /** Of those still to make, for each step of the guide: the first so many are past it. */
  readonly past: readonly number[];
}

/**
 * Whatever is finished, or on its way, of a line. Who is past a step is past all that leads to it; a finished part is
 * past the steps for it, where whole models are made.
 */
export function readyMade(
  at: GuideAt,
  part: string | undefined,
  guide: Guide,
  finished: readonly Finished[],
): ReadyMade {
  const own = finished.filter(
    (row) =>
      row.guide === at.id &&
      (row.level ?? usualLevel(guide)) === at.level &&
      (row.part === part || (row.part !== undefined && part === undefined)),
  );
  return {
    ready: sum(own.filter((row) => row.part === part).map(({ models }) => models)),
    past: at.steps.map((step) => sum(own.map((row) => pastStep(at, part, step, row)))),
  };
}

function pastStep(at: GuideAt, part: string | undefined, step: StepAt, row: Finished): number {
  const beyond = row.past.filter((past) => leadingTo(at, past.step).has(step.id));
  const isOfPart = row.part !== part && step.for.per === 'part' && step.for.part === row.part;
  return Math.max(0, ...beyond.map(({ models }) => models)) + (isOfPart ? row.models : 0);
}

/**
 * Models in those runs of a step of which all models are past it.
 *
 *     4 a run, 10 made, 6 past:  [1 2 3 4] [5 6 7 8] [9 10]   ->   4      10 past   ->   10
 */
export function inPastRuns(at: GuideAt, step: StepAt, made: number, past: number): number {
  const served = modelsServed(at, step.for, made);
  return past >= made ? made : Math.floor(past / served) * served;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, number) => all + number, 0);
}
