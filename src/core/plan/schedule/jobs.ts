import type { Line } from '../demand/line.ts';
import type { Run } from '../demand/plan-runs.ts';
import type { StepAt } from '../scale/step-uses.ts';

/** The wait of a run as a job of its own. */
export interface WaitJob {
  readonly job: number;
  /** The run, which is also the job of its hands-on. */
  readonly of: number;
  /** It must begin the moment hands leave: it has hours, neighbours or places of its own. */
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

/**
 * @param direction  Backwards, every last run has a latest end of its own, so that its wait is a job only where places
 *                   are held through it.
 */
export function jobsOf(lines: readonly Line[], runs: readonly Run[], direction: Direction): Jobs {
  const firstRuns = new Map<string, number>();
  runs.forEach(({ line, step, run }, index) => run === 0 && firstRuns.set(`${line} ${step.id}`, index));
  const isLeft = (run: Run): boolean => direction === 'forwards' || holdsPlaces(run);
  const hasJob = (run: Run): boolean =>
    run.wait > 0 && (isBound(run.step) || (isLast(run, lines) && isLeft(run)));
  const waiting = runs.flatMap((run, index) => (hasJob(run) ? [index] : []));
  const atOnce = (of: number): boolean => direction === 'backwards' || isBound(runs[of]!.step);
  const waits = waiting.map((of, i) => ({ job: runs.length + i, of, atOnce: atOnce(of) }));
  const byRun = new Map(waits.map((wait) => [wait.of, wait]));
  return {
    runs,
    waits,
    waitOf: (run) => byRun.get(run),
    handsOn: (line, step, run) => firstRuns.get(`${line} ${step}`)! + run,
  };
}

/** The run of which a job is the hands-on or the wait. */
export function runOfJob(job: number, { runs, waits }: Jobs): Run {
  return runs[job] ?? runs[waits[job - runs.length]!.of]!;
}

/** Whether a plan runs from its start on, or back from the time when all is ready. */
export type Direction = 'forwards' | 'backwards';

/** Watched, or lit. */
function isBound({ watched, ignition }: StepAt): boolean {
  return watched || ignition;
}

function holdsPlaces({ step }: Run): boolean {
  return Object.keys(step.waitsAt).length > 0;
}

/** Whether the models of a run are ready after it. */
export function isLast({ line, step }: Run, lines: readonly Line[]): boolean {
  return stepsAfter(lines[line]!.at, step).length === 0;
}

/** Steps that come directly after one. */
export function stepsAfter(at: Line['at'], step: StepAt): readonly StepAt[] {
  return at.steps.filter(({ after }) => after.includes(step.id));
}
