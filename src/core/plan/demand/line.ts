import type { Workspace } from '../model/workspace.ts';
import type { GuideAt } from '../model/guide.ts';
import { type Exact, exact } from '../quantity/exact.ts';
import { type StepHazards, stepHazards } from './hazards.ts';
import { type HowMany, howMany, inFullRuns } from './how-many.ts';
import { densityOf } from './requirements.ts';
import { modelsServed } from './runs.ts';
import { type Needs, needsOf } from './scale.ts';
import { type Draw, drawsOf } from './shares.ts';

/** Models of one guide and level while they are planned. */
export interface Line extends HowMany {
  readonly at: GuideAt;
  /** The part that is made alone; absent where whole models are. */
  readonly part?: string;
  readonly forOthers: number;
  readonly needs: Needs;
  readonly draws: readonly Draw[];
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

/** @param spares  Share of spares. */
export function lineOf(asked: Asked, workspace: Workspace, spares: Exact): Line {
  const { at, wanted, forOthers } = asked;
  const counts = howMany(wanted, forOthers, exact(at.yields), spares);
  const alwaysFull = at.steps.filter(({ partial }) => !partial).map((step) => modelsServed(at, step.for, 1));
  const made = inFullRuns(counts.made, alwaysFull);
  return {
    ...asked,
    ...counts,
    made,
    needs: needsOf(at, made, made),
    draws: drawsOf(at, (material) => densityOf(workspace.materials[material])),
    hazards: stepHazards(at, workspace),
  };
}

/** Wanted and spare ones: what "each" divides by. */
export function goodOnes({ wanted, spares }: HowMany): number {
  return wanted + spares;
}
