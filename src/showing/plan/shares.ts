import type { Workspace } from '../../core/model/workspace.ts';
import type { PlannedLine, StepNeed, StepTake } from '../../core/plan/result.ts';
import { exact, floor, zero } from '../../core/quantity/exact.ts';
import { type Measure, compare, convert, ratio, times } from '../../core/quantity/quantity.ts';
import { largestRemainder } from '../../core/quantity/round.ts';
import { roundedUp, roundedUpTo, stepOf } from '../text/amounts.ts';
import { readingOf } from '../text/readings.ts';
import type { System } from '../text/systems.ts';

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

/** Something that a line uses, what it is measured with, and in which units. */
export interface Measured {
  readonly line: PlannedLine;
  readonly use: string;
  readonly tools: Workspace['tools'];
  readonly system: System;
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
export function sharesOf(of: Measured): ReadonlyMap<string, Measure> {
  const takes = takesOf(of);
  const shares = shared(takes, of);
  return new Map(takes.map(({ step, total }, i) => [step, shares?.[i] ?? roundedFor(of, total)]));
}

/** What a line needs of something, rounded up: the sum of what its steps take, where they take all of it. */
export function roundedTotal(of: Measured): Measure {
  const { total } = needOf(of.line, of.use)!;
  const step = commonStep(takesOf(of), of);
  return step ? roundedUpTo(step, total) : roundedFor(of, total);
}

/** An amount of something rounded up to what the tools of its steps read. */
export function roundedFor({ line, use, tools, system }: Measured, amount: Measure): Measure {
  return roundedUp(amount, readingOf(line, use, amount.unit, tools), system);
}

interface Take {
  readonly step: string;
  readonly total: Measure;
}

function takesOf({ line, use }: Measured): readonly Take[] {
  return line.steps.flatMap((step) =>
    step.takes
      .filter((take) => take.use === use)
      .map((take) => ({ step: step.step, total: takenOf(line, step, take).total })),
  );
}

function shared(takes: readonly Take[], of: Measured): readonly Measure[] | undefined {
  const step = commonStep(takes, of);
  if (!step) return undefined;
  const { value } = roundedUpTo(step, needOf(of.line, of.use)!.total);
  const counts = largestRemainder(
    floor(value.div(step.value)),
    takes.map(({ total }) => convert(total, step.unit).value),
  );
  return counts.map((n) => ({ value: step.value.mul(n), unit: step.unit }));
}

/**
 * What the total and all its shares are rounded to: in US units as finely as the smallest share asks for. Absent where
 * the steps do not add up to the total.
 */
function commonStep(takes: readonly Take[], { line, use, tools, system }: Measured): Measure | undefined {
  const total = needOf(line, use)?.total;
  if (!total || !addUp(takes, total)) return undefined;
  const smallest = system === 'US' ? smallestOf(takes) : total;
  return stepOf(smallest ?? total, readingOf(line, use, total.unit, tools), system);
}

function addUp(takes: readonly Take[], total: Measure): boolean {
  const sum = takes.reduce((all, take) => all.add(convert(take.total, total.unit).value), zero);
  return takes.length > 0 && sum.equals(total.value);
}

function smallestOf(takes: readonly Take[]): Measure | undefined {
  const some = takes.map(({ total }) => total).filter(({ value }) => value.n !== 0n);
  return some.sort(compare)[0];
}
