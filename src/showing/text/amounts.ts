import { type Exact, exact, zero } from '../../core/quantity/exact.ts';
import { type Measure, convert, measure, ratio } from '../../core/quantity/quantity.ts';
import { roundTo, roundUpTo } from '../../core/quantity/round.ts';
import { type Dimension, dimensionOf } from '../../core/quantity/units.ts';
import type { Quantity, Size } from '../../core/model/values.ts';
import { customaryParts, customaryStep } from './customary.ts';
import { noBreak } from './fill.ts';
import { showNumber, showRatio } from './numbers.ts';
import { type System, isCustomary } from './systems.ts';

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
 * An amount rounded up to what can be measured, in the unit of that. A count is rounded up to whole ones; what has no
 * reading (a temperature, a share) stays as it is.
 *
 * @param reading  Of the same dimension; the usual one where there is none.
 */
export function roundedUp(amount: Measure, reading: Measure | undefined, system: System): Measure {
  return roundedUpTo(stepOf(amount, reading, system), amount);
}

export function roundedUpTo(step: Measure | undefined, amount: Measure): Measure {
  if (!step) return amount;
  return { value: roundUpTo(convert(amount, step.unit).value, step.value), unit: step.unit };
}

/** What is left over, rounded down: never more than there is. */
export function roundedDown(amount: Measure, system: System): Measure {
  const step = dimensionOf(amount.unit) === 'count' ? undefined : stepOf(amount, undefined, system);
  if (!step) return amount;
  return { value: ratio(amount, step).floor().mul(step.value), unit: step.unit };
}

/**
 * What an amount is rounded to: of its ladder, or in US units as its tool and its size allow; of counts one. Absent
 * where nothing is rounded.
 */
export function stepOf(
  amount: Measure,
  reading = usualReading(amount.unit),
  system: System,
): Measure | undefined {
  if (dimensionOf(amount.unit) === 'count') return { value: exact(1), unit: amount.unit };
  if (!reading) return undefined;
  const customary = system === 'US' ? customaryStep(amount, reading) : undefined;
  return customary ?? metricStep(amount, reading);
}

function metricStep(amount: Measure, reading: Measure): Measure | undefined {
  const base = ladders[dimensionOf(amount.unit)]?.reading.unit;
  if (!base) return undefined;
  const coarse = rungOf(convert(amount, base).value, amount.unit)?.to;
  return coarse ? { value: exact(coarse), unit: base } : convert(reading, base);
}

/** An amount as a builder reads it: rounded up, in a handy unit. 1259.2 g -> "1.26 kg". */
export function showAmount(amount: Measure, reading: Measure | undefined, system: System): string {
  return showExactly(roundedUp(amount, reading, system), system);
}

/** An amount that needs no rounding (a reading, a pack, a side), in a handy unit. A share of one is a fraction: "1/12". */
export function showExactly(amount: Measure, system?: System): string {
  return joined(amountParts(amount, system));
}

/** Number and unit of a rounded amount apart, for pages that set the number large. */
export function amountParts(
  amount: Measure,
  system: System = 'metric',
): { readonly number: string; readonly unit: string } {
  if (system === 'US' && isCustomary(amount.unit)) return customaryParts(amount);
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

/** "150 mm × 100 mm", "5 7/8 in × 3 15/16 in": as near as a rule reads. */
export function showSize({ sides }: Size, system: System = 'metric'): string {
  return sides.map(system === 'US' ? inInches : inMillimetres).join(' × ');
}

/** As written; a side in inches or feet in millimetres, to a tenth. */
function inMillimetres(side: Quantity): string {
  if (!isCustomary(side.unit)) return showAsWritten(side);
  const { value, unit } = convert(measure(side), 'mm');
  return joined({ number: showNumber(roundTo(value, exact('1/10'))), unit });
}

/** What is too small for the marks of a rule in inches stays in millimetres. */
function inInches(side: Quantity): string {
  const nearest = nearestMark(measure(side));
  return nearest ? showExactly(nearest, 'US') : inMillimetres(side);
}

/** The nearest mark of a rule in inches; absent where its marks are too far apart for the length. */
export function nearestMark(length: Measure): Measure | undefined {
  const step = customaryStep(length, { value: zero, unit: 'mm' });
  return step && { value: roundTo(convert(length, step.unit).value, step.value), unit: step.unit };
}
