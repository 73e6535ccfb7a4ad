import type { Line } from './line.ts';
import type { Run } from './plan-runs.ts';
import type { StepAt } from './step-uses.ts';

/** The wait of a run as a job of its own. */
export interface WaitJob {
  readonly job: number;
  /** The run, which is also the job of its hands-on. */
  readonly of: number;
  /** It must begin the moment hands leave: it has hours, or neighbours, of its own. */
  readonly atOnce: boolean;
}

/**
 * The jobs of a plan: first the hands-on of every run, in the order of the runs, then the waits that matter by
 * themselves. Any other wait is only time between two runs.
 */
export interface Jobs {
  readonly runs: readonly Run[];
  readonly waits: readonly WaitJob[];
  readonly waitOf: (run: number) => WaitJob | undefined;
  /** The job of the hands-on of one run of a step. */
  readonly handsOn: (line: number, step: string, run: number) => number;
}

export function jobsOf(lines: readonly Line[], runs: readonly Run[]): Jobs {
  const firstRuns = new Map<string, number>();
  runs.forEach(({ line, step, run }, index) => run === 0 && firstRuns.set(`${line} ${step.id}`, index));
  const waiting = runs.flatMap((run, index) => (hasJob(run, lines[run.line]!) ? [index] : []));
  const waits = waiting.map((of, i) => ({ job: runs.length + i, of, atOnce: isBound(runs[of]!.step) }));
  const byRun = new Map(waits.map((wait) => [wait.of, wait]));
  return {
    runs,
    waits,
    waitOf: (run) => byRun.get(run),
    handsOn: (line, step, run) => firstRuns.get(`${line} ${step}`)! + run,
  };
}

/** A wait that is watched, lit, or the last of its model. */
function hasJob({ wait, step }: Run, { at }: Line): boolean {
  return wait > 0 && (isBound(step) || stepsAfter(at, step).length === 0);
}

function isBound({ watched, ignition }: StepAt): boolean {
  return watched || ignition;
}

/** Steps that come directly after one. */
export function stepsAfter(at: Line['at'], step: StepAt): readonly StepAt[] {
  return at.steps.filter(({ after }) => after.includes(step.id));
}
