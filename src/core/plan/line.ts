import type { GuideAt } from '../model/guide.ts';
import type { StepHazards } from './hazards.ts';
import type { HowMany } from './how-many.ts';
import type { Needs } from './scale.ts';
import type { Draw } from './shares.ts';

/** Models of one guide and level while they are planned. */
export interface Line extends HowMany {
  readonly at: GuideAt;
  readonly needs: Needs;
  readonly draws: readonly Draw[];
  readonly hazards: readonly StepHazards[];
}

/** Wanted and spare ones: what "each" divides by. */
export function goodOnes({ wanted, spares }: HowMany): number {
  return wanted + spares;
}
