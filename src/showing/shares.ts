import type { Workspace } from '../core/model/workspace.ts';
import type { PlannedLine, StepNeed, StepTake } from '../core/plan/result.ts';
import { exact, floor, zero } from '../core/quantity/exact.ts';
import { type Measure, convert, ratio, times } from '../core/quantity/quantity.ts';
import { largestRemainder } from '../core/quantity/round.ts';
import { dimensionOf } from '../core/quantity/units.ts';
import { roundedUp, usualReading } from './amounts.ts';
import { readingOf } from './readings.ts';

/** What a line needs of something that its steps name, exact. */
export interface Need {
  readonly total: Measure;
  readonly one: Measure;
}

/** Of a row, else of an ingredient of a mix, else of a mix. Of what does several models: the share that is used. */
export function needOf(line: PlannedLine, use: string): Need | undefined {
  const row = line.rows.find((need) => line.at.materials[need.row]?.id === use);
  if (row && doesSeveral(line, use)) return { total: row.usual, one: row.one };
  return (
    row ??
    line.mixes.flatMap(({ ingredients }) => ingredients).find((ingredient) => ingredient.use === use) ??
    line.mixes.find(({ mix }) => mix === use)
  );
}

/** A can that does 80 models is bought whole, and used by an eightieth. */
function doesSeveral({ at }: PlannedLine, use: string): boolean {
  return at.materials.some(({ id, does }) => id === use && does !== undefined);
}

/** What a step takes, exact: in all its runs, and in a full one. Of what does several models: the share that is used. */
export function takenOf(
  line: PlannedLine,
  { runs }: StepNeed,
  take: StepTake,
): Record<'total' | 'run', Measure> {
  const row = line.rows.find((need) => line.at.materials[need.row]?.id === take.use);
  if (!row || !doesSeveral(line, take.use) || row.total.value.n === 0n) return take;
  const total = times(take.total, ratio(row.usual, row.total));
  return { total, run: times(total, exact(runs[0]?.length ?? 0).div(line.made)) };
}

/**
 * What each step takes of something, rounded so that the steps add up to the total that is shown.
 *
 *     500.4 g with a scale of 1 g: 501 g shown;  steps of 250.2 g each take 251 g and 250 g
 *
 * Where steps do not take all of it, or take it twice over, each is rounded up by itself.
 *
 * @returns By step id.
 */
export function sharesOf(
  line: PlannedLine,
  use: string,
  tools: Workspace['tools'],
): ReadonlyMap<string, Measure> {
  const takes = line.steps.flatMap((step) =>
    step.takes
      .filter((take) => take.use === use)
      .map((take) => ({ step: step.step, total: takenOf(line, step, take).total })),
  );
  const total = needOf(line, use)?.total;
  const shares = total && addUp(takes, total) ? shared(takes, total, line, use, tools) : undefined;
  return new Map(
    takes.map(({ step, total: own }, i) => [step, shares?.[i] ?? roundedFor(line, use, own, tools)] as const),
  );
}

/** An amount of something rounded up to what the tools of its steps read. */
export function roundedFor(
  line: PlannedLine,
  use: string,
  amount: Measure,
  tools: Workspace['tools'],
): Measure {
  return roundedUp(amount, readingOf(line, use, amount.unit, tools));
}

type Part = { readonly total: Measure };

function addUp(takes: readonly Part[], total: Measure): boolean {
  const sum = takes.reduce((all, take) => all.add(convert(take.total, total.unit).value), zero);
  return takes.length > 0 && sum.equals(total.value);
}

function shared(
  takes: readonly Part[],
  total: Measure,
  line: PlannedLine,
  use: string,
  tools: Workspace['tools'],
): readonly Measure[] | undefined {
  const shownTotal = roundedFor(line, use, total, tools);
  const step = stepOf(shownTotal.unit, readingOf(line, use, total.unit, tools));
  if (!step) return undefined;
  const counts = largestRemainder(
    floor(shownTotal.value.div(step.value)),
    takes.map((take) => convert(take.total, total.unit).value),
  );
  return counts.map((n) => ({ value: step.value.mul(n), unit: step.unit }));
}

/** What one step of the rounding is, in the unit of the rounded amount; absent where nothing is rounded. */
function stepOf(unit: string, reading = usualReading(unit)): Measure | undefined {
  if (dimensionOf(unit) === 'count') return { value: exact(1), unit };
  return reading && convert(reading, unit);
}
