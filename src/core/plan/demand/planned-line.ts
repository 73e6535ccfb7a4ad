import type { Line } from './line.ts';
import type { PlannedLine, StepNeed } from './result.ts';
import { modelsServed, runsOf } from './runs.ts';
import { stepTakes } from './step-takes.ts';

/** A line as the plan tells it: counts, needs, and step by step its runs, what they take and what can hurt there. */
export function plannedLine(line: Line): PlannedLine {
  const { at, part, wanted, forOthers, spares, made, needs } = line;
  return {
    guide: at.id,
    ...(at.level === undefined ? {} : { level: at.level }),
    ...(part === undefined ? {} : { part }),
    at,
    wanted,
    ...(forOthers > 0 ? { forOthers } : {}),
    spares,
    made,
    rows: needs.rows,
    mixes: needs.mixes,
    steps: at.steps.map((_, step) => stepNeed(line, step)),
  };
}

function stepNeed({ at, made, draws, hazards }: Line, index: number): StepNeed {
  const step = at.steps[index]!;
  const served = modelsServed(at, step.for, made);
  const own = draws.filter((draw) => draw.step === index);
  return {
    step: step.id,
    runs: runsOf(served, made),
    takes: stepTakes(at, own, Math.min(served, made), made),
    hazards: hazards[index]!.hazards,
    dangerous: hazards[index]!.dangerous,
  };
}
