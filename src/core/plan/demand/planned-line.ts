import type { Line } from './line.ts';
import type { PlannedLine, StepNeed } from '../result.ts';
import { modelsServed, runsOf } from '../scale/runs.ts';
import { stepTakes } from '../scale/step-takes.ts';

/** A line as the plan tells it: counts, needs, and step by step its runs, what they take and what can hurt there. */
export function plannedLine(line: Line): PlannedLine {
  const { at, part, wanted, forOthers, spares, finished, made, needs } = line;
  return {
    guide: at.id,
    ...(at.level === undefined ? {} : { level: at.level }),
    ...(part === undefined ? {} : { part }),
    at,
    wanted,
    ...(forOthers > 0 ? { forOthers } : {}),
    spares,
    ...(finished > 0 ? { finished } : {}),
    made,
    rows: needs.rows,
    mixes: needs.mixes,
    steps: at.steps.map((_, step) => stepNeed(line, step)),
  };
}

function stepNeed({ at, made, past, draws, hazards }: Line, index: number): StepNeed {
  const step = at.steps[index]!;
  const served = modelsServed(at, step.for, made);
  const own = draws.filter((draw) => draw.step === index);
  return {
    step: step.id,
    runs: runsOf(served, made).filter((models) => models[0]! > past[index]!),
    takes: stepTakes(at, own, { run: Math.min(served, made), left: made - past[index]!, made }),
    hazards: hazards[index]!.hazards,
    dangerous: hazards[index]!.dangerous,
  };
}
