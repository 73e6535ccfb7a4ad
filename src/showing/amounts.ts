import { type Exact, exact, zero } from '../core/quantity/exact.ts';
import { type Measure, convert, measure, ratio } from '../core/quantity/quantity.ts';
import { roundTo, roundUpTo } from '../core/quantity/round.ts';
import { type Dimension, dimensionOf, unitOf } from '../core/quantity/units.ts';
import type { Quantity, Size } from '../core/model/values.ts';
import { noBreak } from './fill.ts';
import { showNumber, showRatio } from './numbers.ts';

/**
 * How a dimension is shown: rounded up in the unit of its reading, then printed in the largest unit that it fills.
 *
 *     0.05 g -> 50 mg      350 g -> 350 g      1260 g -> 1.26 kg
 */
interface Ladder {
  /** What builders can read where no tool says better. Common practice, no source. */
  readonly reading: { readonly value: string; readonly unit: string };
  /**
   * Units from small to large, each used from so much of the reading's unit on; `to` where nobody wants to read it as
   * finely as the reading would allow.
   */
  readonly rungs: readonly { readonly unit: string; readonly from: string; readonly to?: string }[];
}

const ladders: Partial<Record<Dimension, Ladder>> = {
  mass: {
    reading: { value: '1', unit: 'g' },
    rungs: [
      { unit: 'mg', from: '0' },
      { unit: 'g', from: '1/10' },
      { unit: 'kg', from: '1000' },
    ],
  },
  volume: {
    reading: { value: '5', unit: 'mL' },
    rungs: [
      { unit: 'µL', from: '0' },
      { unit: 'mL', from: '1/10' },
      { unit: 'L', from: '1000' },
    ],
  },
  length: {
    reading: { value: '1', unit: 'mm' },
    rungs: [
      { unit: 'mm', from: '0' },
      { unit: 'm', from: '1000' },
    ],
  },
  area: {
    reading: { value: '1', unit: 'cm²' },
    rungs: [
      { unit: 'cm²', from: '0' },
      { unit: 'm²', from: '10000', to: '100' },
    ],
  },
};

/** The reading used where no tool of a step says one; absent for what is not measured out (a temperature, a share). */
export function usualReading(unit: string): Measure | undefined {
  const reading = ladders[dimensionOf(unit)]?.reading;
  return reading && measure(reading);
}

/**
 * An amount rounded up to what can be measured, in the unit of the ladder. A count is rounded up to whole ones; what
 * has no reading (a temperature, a share) stays as it is.
 *
 * @param reading  Of the same dimension; the usual one where left out.
 */
export function roundedUp(amount: Measure, reading = usualReading(amount.unit)): Measure {
  if (dimensionOf(amount.unit) === 'count') return { ...amount, value: roundUpTo(amount.value, exact(1)) };
  const step = reading && stepOf(amount, reading);
  return step ? { value: roundUpTo(convert(amount, step.unit).value, step.value), unit: step.unit } : amount;
}

/** What is left over, rounded down: never more than there is. */
export function roundedDown(amount: Measure): Measure {
  const reading = usualReading(amount.unit);
  const step = reading && stepOf(amount, reading);
  if (!step) return amount;
  return { value: ratio(amount, step).floor().mul(step.value), unit: step.unit };
}

/** What an amount is rounded to, in the unit of its ladder. */
function stepOf(amount: Measure, reading: Measure): Measure | undefined {
  const base = ladders[dimensionOf(amount.unit)]?.reading.unit;
  if (!base) return undefined;
  const coarse = rungOf(convert(amount, base).value, amount.unit)?.to;
  return coarse ? { value: exact(coarse), unit: base } : convert(reading, base);
}

/** An amount as a builder reads it: rounded up, in a handy unit. `showAmount(1259.2 g)` -> "1.26 kg". */
export function showAmount(amount: Measure, reading?: Measure): string {
  return joined(amountParts(roundedUp(amount, reading)));
}

/** An amount that needs no rounding (a reading, a pack, a side), in a handy unit. A share of one is a fraction: "1/12". */
export function showExactly(amount: Measure): string {
  return joined(amountParts(amount));
}

/** Number and unit of a rounded amount apart, for pages that set the number large. */
export function amountParts(amount: Measure): { readonly number: string; readonly unit: string } {
  const handy = inHandyUnit(amount);
  return { number: showRatio(handy.value), unit: handy.unit };
}

function joined({ number, unit }: { readonly number: string; readonly unit: string }): string {
  return unit === '' ? number : `${number}${noBreak}${unit}`;
}

function inHandyUnit(amount: Measure): Measure {
  const base = ladders[dimensionOf(amount.unit)]?.reading.unit;
  if (!base) return amount;
  const inBase = convert(amount, base);
  const rung = inBase.value.equals(zero) ? undefined : rungOf(inBase.value, amount.unit);
  return rung ? convert(inBase, rung.unit) : inBase;
}

/** The largest unit that an amount fills; the smallest, where it fills none. */
function rungOf(inBase: Exact, unit: string): Ladder['rungs'][number] | undefined {
  const rungs = ladders[dimensionOf(unit)]?.rungs ?? [];
  return rungs.findLast(({ from }) => inBase.compare(exact(from)) >= 0) ?? rungs[0];
}

/** As its author wrote it, in the same unit: what a shop's label says. "454 g", "1 lb". */
export function showAsWritten({ value, unit }: Quantity): string {
  return joined({ number: showRatio(exact(value)), unit });
}

/** "150 mm × 100 mm". A side in inches or feet is shown in millimetres, to a tenth. */
export function showSize(size: Size): string {
  return size.sides.map((side) => (isMetric(side.unit) ? showAsWritten(side) : inTenths(side))).join(' × ');
}

function inTenths(side: Quantity): string {
  const { value, unit } = convert(measure(side), 'mm');
  return joined({ number: showNumber(roundTo(value, exact('1/10'))), unit });
}

function isMetric(unit: string): boolean {
  return ['SI', 'metric'].includes(unitOf(unit).system);
}
