import { atOnce } from '../../../../src/core/in-pieces.ts';
import type { Guide } from '../../../../src/core/model/guide.ts';
import type { Material } from '../../../../src/core/model/material.ts';
import type { Program } from '../../../../src/core/model/program.ts';
import type { DemandLine, PlanSettings } from '../../../../src/core/plan/demand.ts';
import type { PlannedJob } from '../../../../src/core/plan/result.ts';
import { type Jobs, jobsOf } from '../../../../src/core/plan/schedule/jobs.ts';
import { type Resources, resourcesOf } from '../../../../src/core/plan/schedule/resources.ts';
import { type Work, workingOut } from '../../../../src/core/plan/work.ts';
import type { Hold, Lag, Moment } from '../../../../src/core/solve/schedule/problem.ts';
import { aMaterial, aWorkspace } from '../a-workspace.ts';

/** Guides as jobs, before they are placed in time, and words to read them by. */
export interface Workload extends Work {
  readonly jobs: Jobs;
  readonly resources: Resources;
}

/**
 * @param settings  With `readyBy` the plan runs backwards.
 * @param known     Materials of which more matters than their names.
 */
export function aWorkload(
  guides: readonly Guide[],
  demand: readonly DemandLine[],
  program: Partial<Program> = {},
  settings: Partial<PlanSettings> = {},
  known: readonly Material[] = [],
): Workload {
  const uses = guides.flatMap(({ mixes, materials }) => [...materials, ...mixes.flatMap(({ of }) => of)]);
  const materials = [...uses.map(({ use }) => aMaterial(use)), ...known];
  const workspace = aWorkspace({ guides, materials, program });
  const work = atOnce(workingOut(workspace, demand, { today: '2026-11-25', ...settings }, 1));
  if ('refused' in work) throw new Error(`refused: ${JSON.stringify(work.refused)}`);
  const jobs = jobsOf(work.lines, work.runs, work.goal ? 'backwards' : 'forwards');
  return { ...work, jobs, resources: resourcesOf(work.lines, workspace.program, work.builders) };
}

/** A run of the first line, as a schedule has it. */
export function aJob(
  step: string,
  models: readonly number[],
  start: number,
  end: number,
  more: Partial<PlannedJob> = {},
): PlannedJob {
  const one = { line: 0, run: 1, people: 1, builders: [1], places: {}, tools: {} };
  return { ...one, step, models, start, end, waitEnd: end, ...more };
}

/** `pour 2`, the second run of a step, and `pour 2 wait`. */
function nameOf(job: number, { runs, waits }: Jobs): string {
  const wait = waits.find((each) => each.job === job);
  const { step, run } = runs[wait?.of ?? job]!;
  return `${step.id} ${run + 1}${wait ? ' wait' : ''}`;
}

/** `melt 1 end + 60 <= pour 2 start`. */
export function lagText([i, j, least, edgeOfI, edgeOfJ]: Lag, { jobs }: Workload): string {
  const added = least === 0 ? '' : least > 0 ? ` + ${least}` : ` - ${-least}`;
  return `${nameOf(i, jobs)} ${edgeOfI}${added} <= ${nameOf(j, jobs)} ${edgeOfJ}`;
}

/** `1 shelf: pour 1 end, unmould 1 start`: so many of a thing, from the first moments to the last ones. */
export function holdText({ resource, count, from, to }: Hold, { jobs, resources }: Workload): string {
  const moments = (all: readonly Moment[]) => all.map(([job, edge]) => `${nameOf(job, jobs)} ${edge}`);
  return `${count} ${resources.names[resource]!.id}: ${moments(from).join(' & ')}, ${moments(to).join(' & ')}`;
}
