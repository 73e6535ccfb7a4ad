import type { Obstacle, ScheduleProblem } from '../../solve/schedule/problem.ts';
import { type Jobs, runOfJob } from './jobs.ts';
import type { Line } from '../demand/line.ts';
import type { Run } from '../demand/plan-runs.ts';
import type { Resources } from './resources.ts';
import type { NoSchedule } from '../result.ts';

/** Why there is no schedule, in the words of the guides: which limit, which steps, which place or tool. */
export function noSchedule(
  code: NoSchedule['code'],
  { because, jobs: bound, resource }: Obstacle,
  context: {
    readonly lines: readonly Line[];
    readonly jobs: Jobs;
    readonly resources: Resources;
    readonly problem: ScheduleProblem;
    readonly isBackwards: boolean;
  },
): NoSchedule {
  const runs = [...new Set(bound.map((job) => runOfJob(job, context.jobs)))];
  const [first, second] = namesOf(runs, context.lines);
  const facts = { ...(first ? { step: first } : {}), ...(second ? { other: second } : {}) };
  if (resource === undefined) {
    const variant = because === 'calendar' && context.isBackwards ? 'calendarUntilReady' : because;
    return { code, variant, facts, helps: [] };
  }
  const { kind, id } = context.resources.names[resource]!;
  const has = String(context.problem.capacities[resource]!);
  return { code, variant: kind, facts: { ...facts, ...(id ? { [kind]: id } : {}), has }, helps: [] };
}

/** Headings of the steps, in the order of the runs, each once. */
function namesOf(runs: readonly Run[], lines: readonly Line[]): string[] {
  return [...new Set(runs.map(({ line, step }) => headingOf(lines[line]!.at, step.id)))];
}

export function headingOf({ prose }: Line['at'], step: string): string {
  return prose.sections.find((section) => section.step === step)?.heading ?? step;
}
