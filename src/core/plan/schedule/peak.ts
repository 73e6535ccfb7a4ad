import type { Line } from '../demand/line.ts';
import type { PlannedJob } from '../result.ts';
import { runOf } from '../scale/runs.ts';
import { type ToolRowAt, isInHand } from '../scale/step-uses.ts';

/** From one minute until another, so many of one tool are in use. */
interface Use {
  readonly from: number;
  readonly to: number;
  readonly count: number;
}

/** The most of a tool that a schedule has in use at once. */
export function peakOf(tool: string, lines: readonly Line[], jobs: readonly PlannedJob[]): number {
  const uses = lines.flatMap((line, index) => {
    const own = jobs.filter((job) => job.line === index);
    return line.at.tools
      .filter(({ use }) => use === tool)
      .flatMap((row) => [...inHand(line, row, own), ...held(row, own)]);
  });
  return mostAtOnce(uses);
}

function inHand({ at }: Line, row: ToolRowAt, jobs: readonly PlannedJob[]): Use[] {
  const steps = new Set(at.steps.filter((step) => isInHand(at, row, step)).map(({ id }) => id));
  return jobs
    .filter(({ step }) => steps.has(step))
    .map(({ start, end }) => ({ from: start, to: end, count: row.count }));
}

/** Each group of models that shares the tool: from the first hands on it to the last off it. */
function held({ held: hold, holds, count }: ToolRowAt, jobs: readonly PlannedJob[]): Use[] {
  if (!hold) return [];
  const first = boundary(jobs, hold.from, holds, ({ start }) => start, Math.min);
  const last = boundary(jobs, hold.to, holds, ({ end }) => end, Math.max);
  return [...first].flatMap(([group, from]) => {
    const to = last.get(group);
    return to === undefined ? [] : [{ from, to, count }];
  });
}

/** For each group of models the earliest or latest moment of the runs of a step that touch it. */
function boundary(
  jobs: readonly PlannedJob[],
  step: string,
  holds: number,
  momentOf: (job: PlannedJob) => number,
  choose: (a: number, b: number) => number,
): Map<number, number> {
  const moments = new Map<number, number>();
  for (const job of jobs.filter((other) => other.step === step)) {
    for (const group of new Set(job.models.map((model) => runOf(model, holds)))) {
      moments.set(group, choose(moments.get(group) ?? momentOf(job), momentOf(job)));
    }
  }
  return moments;
}

/** What is given back at a minute may be taken again in it. */
export function mostAtOnce(uses: readonly Use[]): number {
  const changes = uses
    .flatMap(({ from, to, count }) => [
      { at: from, by: count },
      { at: to, by: -count },
    ])
    .sort((a, b) => a.at - b.at || a.by - b.by);
  let [inUse, most] = [0, 0];
  for (const { by } of changes) most = Math.max(most, (inUse += by));
  return most;
}
