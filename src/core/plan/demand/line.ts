import type { Workspace } from '../../model/workspace.ts';
import type { GuideAt } from '../../model/guide.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import { type StepHazards, stepHazards } from '../scale/hazards.ts';
import type { Finished } from '../demand.ts';
import { type HowMany, howMany, inFullRuns } from './how-many.ts';
import { needsLeft, type ToSupply } from './needs-left.ts';
import { inPastRuns, readyMade } from './ready-made.ts';
import { densityOf } from '../scale/requirements.ts';
import { modelsServed } from '../scale/runs.ts';
import type { Needs } from '../scale/scale.ts';
import { drawsOf } from '../scale/shares.ts';

/** Models of one guide and level while they are planned. */
export interface Line extends HowMany, ToSupply {
  /** The part that is made alone; absent where whole models are. */
  readonly part?: string;
  readonly forOthers: number;
  /** Without what past runs have used. */
  readonly needs: Needs;
  readonly hazards: readonly StepHazards[];
}

/** How many of what a line is to make. */
export interface Asked {
  readonly at: GuideAt;
  readonly part?: string;
  /** For themselves, and for other models of the plan. */
  readonly wanted: number;
  readonly forOthers: number;
}

/**
 * @param spares    Share of spares.
 * @param finished  Models that are there already, of any guide.
 */
export function lineOf(
  asked: Asked,
  workspace: Workspace,
  spares: Exact,
  finished: readonly Finished[],
): Line {
  const { at, part, wanted, forOthers } = asked;
  const { ready, past } = readyMade(at, part, workspace.guides[at.id]!, finished);
  const counts = howMany(wanted, forOthers, exact(at.yields), spares, ready);
  const alwaysFull = at.steps.filter(({ partial }) => !partial).map((step) => modelsServed(at, step.for, 1));
  const made = inFullRuns(counts.enough, alwaysFull);
  const line = {
    ...asked,
    ...counts,
    made,
    past: at.steps.map((step, index) => inPastRuns(at, step, made, past[index]!)),
    draws: drawsOf(at, (material) => densityOf(workspace.materials[material])),
    hazards: stepHazards(at, workspace),
  };
  return { ...line, needs: needsLeft(line, made) };
}

/** What "each" divides by: wanted and spare ones, but for those that are finished. */
export function goodOnes({ wanted, spares, finished }: HowMany): number {
  return wanted + spares - finished;
}

/** A sum over all models of a line for each good one; nothing where none is made. */
export function forEachGood(line: HowMany, all: Exact): Exact {
  const good = goodOnes(line);
  return good === 0 ? zero : all.div(exact(good));
}
