import type { StepProse } from '../../src/rendering/step-prose.ts';
import type { BenchCautions } from '../../src/showing/safety/show-bench-cautions.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { SheetFacts } from './sheet-frame.tsx';

/** A guide at one level as a sheet to print and to work from. */
export interface BenchSheetView extends SheetFacts {
  /** Numbers of the models. */
  readonly models: readonly Shown[];
  readonly steps: Readonly<Record<string, StepProse>>;
  readonly cautions: BenchCautions;
}
