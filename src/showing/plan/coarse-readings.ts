import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine, StepNeed, StepTake } from '../../core/plan/result.ts';
import { exact } from '../../core/quantity/exact.ts';
import {
  type Measure,
  compare,
  convert,
  quantity,
  sameDimension,
  times,
} from '../../core/quantity/quantity.ts';
import { dimensionOf } from '../../core/quantity/units.ts';
import { planWords } from '../../words/plan.ts';
import { showAsWritten, showExactly, usualReading } from '../text/amounts.ts';
import { fill } from '../text/fill.ts';
import { handyBelow } from '../text/handy.ts';
import { useName } from '../text/names.ts';
import { readingOf } from '../text/readings.ts';
import { roundedFor } from './shares.ts';

/** For each thing measured out, whether a finer tool is needed than the steps have: for the smallest amount of it. */
export function coarseReadings(line: PlannedLine, workspace: Workspace): readonly string[] {
  const smallest = new Map<string, StepTake>();
  for (const take of line.steps.flatMap((step) => measuredTakes(step, line))) {
    const name = useName(line.at, take.use, workspace);
    const known = smallest.get(name);
    if (!known || !sameDimension(take.run.unit, known.run.unit)) smallest.set(name, take);
    else if (compare(take.run, known.run) < 0) smallest.set(name, take);
  }
  return [...smallest.values()].flatMap((take) => coarseReading(take, line, workspace));
}

/** Not measured out are pieces, and what is used straight from its pack. */
function measuredTakes({ takes }: StepNeed, line: PlannedLine): readonly StepTake[] {
  const rowOf = (use: string) => line.at.materials.find(({ id }) => id === use);
  return takes.filter(
    ({ use, pieces, run }) => pieces.length === 0 && run.value.n !== 0n && !rowOf(use)?.does,
  );
}

const instruments = ['mass', 'volume', 'length'] as const;

function coarseReading({ use, run }: StepTake, line: PlannedLine, workspace: Workspace): readonly string[] {
  const instrument = instruments.find((dimension) => dimension === dimensionOf(run.unit));
  const reading = readingOf(line, use, run.unit, workspace.tools) ?? usualReading(run.unit);
  const finest = times(run, exact(coarsest));
  if (!instrument || !reading || compare(reading, finest) <= 0) return [];
  return [
    fill(planWords.readings[instrument], {
      amount: showExactly(roundedFor({ line, use, tools: workspace.tools, system: 'metric' }, run)),
      material: useName(line.at, use, workspace),
      reading: showExactly(reading),
      finer: finerText(finest, reading.unit),
    }),
  ];
}

/** In the unit of the reading that is too coarse, so that the two compare at a glance. */
function finerText(finest: Measure, unit: string): string {
  return showAsWritten(quantity({ value: handyBelow(convert(finest, unit).value), unit }));
}

/** A reading may be this share of an amount at most: 2 %. Common practice, no source. */
const coarsest = '1/50';
