import { type Exact, ceil, exact, floor } from '../../quantity/exact.ts';
import type { Lag } from '../../solve/schedule/problem.ts';
import type { Insert } from '../demand/inserts.ts';
import { type Jobs, stepsAfter } from './jobs.ts';
import type { Line } from '../demand/line.ts';
import { modelsServed, runOf, runsOf } from '../scale/runs.ts';
import type { StepAt } from '../scale/step-uses.ts';

/**
 * Models that go into others are ready before the run that uses them: the first ones for the first that need them.
 * Those that are finished go first, and nothing waits for them.
 *
 *     2 inserts a block:   the run of blocks [3 4] begins when inserts 5 to 8 are ready
 */
export function insertLags(lines: readonly Line[], inserts: readonly Insert[], jobs: Jobs): readonly Lag[] {
  return inserts.flatMap((insert) => {
    const { at, past } = lines[insert.into]!;
    const using = usingSteps(lines[insert.into]!, insert.row);
    const least = Math.min(...using.map((step) => past[at.steps.indexOf(step)]!));
    return using.flatMap((step) => lagsFor(lines, insert, step, least, jobs));
  });
}

/** @param past  Models of the user that have theirs already, at whichever step. */
function lagsFor(
  lines: readonly Line[],
  insert: Insert,
  step: StepAt,
  past: number,
  jobs: Jobs,
): readonly Lag[] {
  const [user, maker] = [lines[insert.into]!, lines[insert.of]!];
  const pastStep = user.past[user.at.steps.indexOf(step)]!;
  const each = exact(insert.count).div(exact(user.made - past));
  return runsOf(modelsServed(user.at, step.for, user.made), user.made).flatMap((models, run) => {
    if (models[0]! <= pastStep) return [];
    const [first, last] = [models[0]! - pastStep, models.at(-1)! - pastStep];
    const ahead = insert.before - maker.finished;
    const from = ahead + floor(each.mul(exact(first - 1))) + 1;
    const to = ahead + Math.min(insert.count, ceil(each.mul(exact(last))));
    if (to < 1) return [];
    const awaited = [madeFor(maker, Math.max(1, from)), madeFor(maker, to)] as const;
    return readyBefore(maker, insert.of, awaited, jobs).map((job): Lag => [
      job,
      jobs.handsOn(insert.into, step.id, run),
      jobs.runs[job]!.wait,
      'end',
      'start',
    ]);
  });
}

/** Steps that draw on a row; where none says so, those that come first. */
function usingSteps({ at, draws }: Line, row: number): readonly StepAt[] {
  const using = at.steps.filter((_, step) =>
    draws.some((draw) => draw.step === step && draw.of === 'row' && draw.row === row),
  );
  return using.length > 0 ? using : at.steps.filter(({ after }) => after.length === 0);
}

/** Which model made is the `n`th good one, if those that fail are spread evenly. */
function madeFor({ at, made }: Line, n: number): number {
  const number: Exact = exact(n).div(exact(at.yields));
  return Math.min(made, ceil(number));
}

/** The last hands-on of each of these consecutive models. */
function readyBefore(
  { at, made }: Line,
  line: number,
  [from, to]: readonly [number, number],
  jobs: Jobs,
): number[] {
  const last = at.steps.filter((step) => stepsAfter(at, step).length === 0);
  return last.flatMap((step) => {
    const served = modelsServed(at, step.for, made);
    const [first, end] = [runOf(from, served), runOf(to, served)];
    return Array.from({ length: end - first + 1 }, (_, i) => jobs.handsOn(line, step.id, first + i));
  });
}
