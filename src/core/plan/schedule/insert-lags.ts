import { type Exact, ceil, exact, floor } from '../quantity/exact.ts';
import type { Lag } from '../solve/schedule/problem.ts';
import type { Insert } from './inserts.ts';
import { type Jobs, stepsAfter } from './jobs.ts';
import type { Line } from './line.ts';
import { modelsServed, runOf } from './runs.ts';
import type { StepAt } from './step-uses.ts';

/**
 * Models that go into others are ready before the run that uses them: the first ones for the first that need them.
 *
 *     2 inserts a block:   the run of blocks [3 4] begins when inserts 5 to 8 are ready
 */
export function insertLags(lines: readonly Line[], inserts: readonly Insert[], jobs: Jobs): readonly Lag[] {
  return inserts.flatMap((insert, index) => {
    const before = inserts.slice(0, index).filter(({ of }) => of === insert.of);
    return lagsFor(
      lines,
      insert,
      before.reduce((sum, { count }) => sum + count, 0),
      jobs,
    );
  });
}

/** @param taken  Good ones that go elsewhere, before these. */
function lagsFor(lines: readonly Line[], { into, row, of, count }: Insert, taken: number, jobs: Jobs): Lag[] {
  const [user, maker] = [lines[into]!, lines[of]!];
  const each = exact(count).div(exact(user.made));
  return usingSteps(user, row).flatMap((step) => {
    const served = modelsServed(user.at, step.for, user.made);
    const runs = Array.from({ length: Math.ceil(user.made / served) }, (_, run) => run);
    return runs.flatMap((run) => {
      const last = Math.min((run + 1) * served, user.made);
      const from = madeFor(maker, taken + floor(each.mul(exact(run * served))) + 1);
      const to = madeFor(maker, taken + ceil(each.mul(exact(last))));
      return readyBefore(maker, of, [from, to], jobs).map((job): Lag => [
        job,
        jobs.handsOn(into, step.id, run),
        jobs.runs[job]!.wait,
        'end',
        'start',
      ]);
    });
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
