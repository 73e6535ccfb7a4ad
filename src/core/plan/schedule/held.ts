import type { Hold, Moment } from '../../solve/schedule/problem.ts';
import { type Jobs, stepsAfter } from './jobs.ts';
import type { Line } from '../demand/line.ts';
import type { Run } from '../demand/plan-runs.ts';
import type { Resources } from './resources.ts';
import { modelsServed, runOf, runsOf } from '../scale/runs.ts';
import type { StepAt, ToolRowAt } from '../scale/step-uses.ts';

/** Tools held over several steps, and places where models wait until they are taken on. */
export function heldThings(lines: readonly Line[], jobs: Jobs, resources: Resources): readonly Hold[] {
  const tools = lines.flatMap((line, index) =>
    line.at.tools.flatMap((row) => toolHolds(line, index, row, jobs, resources.toolOf(row.use))),
  );
  const waiting = jobs.runs.flatMap((run, index) => waitingPlaces(lines, run, index, jobs, resources));
  return [...tools, ...waiting];
}

/**
 * One hold for each group of models that share the tool, from the first hands on them to the last off them.
 *
 *     4 in a pot, held from melt to pour:   melt |====|      pour [1 2] |==|  [3 4] |==|
 *                                           pot  |=================================|
 */
function toolHolds(
  line: Line,
  index: number,
  row: ToolRowAt,
  jobs: Jobs,
  resource: number | undefined,
): Hold[] {
  const [from, to] = [row.held?.from, row.held?.to].map((id) => line.at.steps.find((step) => step.id === id));
  if (resource === undefined || !from || !to) return [];
  return runsOf(row.holds, line.made).map((models) => ({
    resource,
    count: row.count,
    from: runsOn(line, from, models).map((run): Moment => [jobs.handsOn(index, from.id, run), 'start']),
    to: runsOn(line, to, models).map((run): Moment => [jobs.handsOn(index, to.id, run), 'end']),
  }));
}

/** Runs of a step that touch some of these consecutive models. */
function runsOn({ at, made }: Line, step: StepAt, models: readonly number[]): number[] {
  const served = modelsServed(at, step.for, made);
  const [first, last] = [runOf(models[0]!, served), runOf(models.at(-1)!, served)];
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}

/** From hands-off until the next step takes the model (the last of them, where several do); at the end, the wait. */
function waitingPlaces(
  lines: readonly Line[],
  run: Run,
  job: number,
  jobs: Jobs,
  resources: Resources,
): Hold[] {
  const line = lines[run.line]!;
  return Object.entries(run.step.waitsAt).flatMap(([place, { count, per }]) => {
    const resource = resources.placeOf(place);
    if (resource === undefined) return [];
    const groups = per === 'run' ? [{ models: run.models, count }] : takenTogether(line, run, count);
    return groups.flatMap((group) => {
      const to = takenOn(line, run, group.models, job, jobs);
      return to.length > 0 ? [{ resource, count: group.count, from: [[job, 'end'] as const], to }] : [];
    });
  });
}

/** Models of a run that go on together, with the places that they take. */
function takenTogether(
  { at, made }: Line,
  { step, models }: Run,
  each: number,
): { models: number[]; count: number }[] {
  const next = stepsAfter(at, step).map((after) => modelsServed(at, after.for, made));
  const groups = new Map<string, number[]>();
  for (const model of models) {
    const key = next.map((served) => runOf(model, served)).join();
    groups.set(key, [...(groups.get(key) ?? []), model]);
  }
  return [...groups.values()].map((group) => ({ models: group, count: each * group.length }));
}

function takenOn(line: Line, run: Run, models: readonly number[], job: number, jobs: Jobs): Moment[] {
  const after = stepsAfter(line.at, run.step);
  const wait = jobs.waitOf(job);
  if (after.length === 0) return wait ? [[wait.job, 'end']] : [];
  return after.flatMap((step) =>
    runsOn(line, step, models).map((next): Moment => [jobs.handsOn(run.line, step.id, next), 'start']),
  );
}
