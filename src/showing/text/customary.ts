import type { Quantity, Rational } from '../../core/model/values.ts';
import { type Exact, exact, zero } from '../../core/quantity/exact.ts';
import { type Measure, compare, convert, measure, times } from '../../core/quantity/quantity.ts';
import { roundTo } from '../../core/quantity/round.ts';
import { type Dimension, dimensionOf } from '../../core/quantity/units.ts';
import { systemWords } from '../../words/units.ts';
import { noBreak } from './fill.ts';

/** How a dimension is measured in US customary units. */
interface Customary {
  /** What amounts are rounded to, from fine to coarse; each a multiple of the first. */
  readonly steps: readonly Quantity[];
  /** From large to small. */
  readonly units: readonly CustomaryUnit[];
}

interface CustomaryUnit {
  readonly unit: string;
  /** The smallest amount that is told in it. */
  readonly from: Rational;
  /** The fractions that its rule, scale, cup or spoon has, the largest first. */
  readonly parts: readonly Rational[];
}

const step = (value: Rational, unit: string): Quantity => ({ value, unit });

/** 15/16, 7/8, … 1/16: every mark of a rule that is divided in so many. */
const marks = (below: number): readonly Rational[] =>
  Array.from({ length: below - 1 }, (_, i) =>
    exact(below - 1 - i)
      .div(below)
      .toFraction(),
  );

/**
 * Rules are marked in sixteenths of an inch, scales in eighths of an ounce, cups come as 1/4, 1/3 and 1/2, spoons as
 * 1/4 and 1/2. Common practice, no source.
 */
const customary: Partial<Record<Dimension, Customary>> = {
  mass: {
    steps: [step('1/8', 'oz')],
    units: [
      { unit: 'lb', from: '1', parts: [] },
      { unit: 'oz', from: '0', parts: marks(8) },
    ],
  },
  volume: {
    steps: [step('1/4', 'US tsp'), step('1/2', 'US tbsp'), step('1/4', 'US cup'), step('1', 'US cup')],
    units: [
      { unit: 'US quart', from: '1', parts: marks(4) },
      { unit: 'US cup', from: '1/4', parts: ['3/4', '2/3', '1/2', '1/3', '1/4'] },
      { unit: 'US tbsp', from: '1/2', parts: ['1/2'] },
      { unit: 'US tsp', from: '0', parts: marks(4) },
    ],
  },
  length: {
    steps: [step('1/16', 'in')],
    units: [
      { unit: 'ft', from: '6', parts: [] },
      { unit: 'in', from: '0', parts: marks(16) },
    ],
  },
  area: {
    steps: [step('1', 'in²'), step('1/4', 'ft²')],
    units: [
      { unit: 'ft²', from: '10', parts: marks(4) },
      { unit: 'in²', from: '0', parts: [] },
    ],
  },
};

/** A coarser step may be this share of an amount at most; the finest, that one. */
const coarseAtMost = '1/50';
const finestAtMost = '1/8';

/**
 * What an amount is rounded to where it is measured in US units.
 *
 * @param amount  The smallest of those that are to be rounded alike.
 * @param reading  What its tool reads: the finest customary step does for an amount that is read no finer than that.
 * @returns Absent where no US measure reads so little: it is weighed or drawn up in metric then.
 */
export function customaryStep(amount: Measure, reading: Measure): Measure | undefined {
  const steps = customary[dimensionOf(amount.unit)]?.steps.map(measure) ?? [];
  const isWithin = (each: Measure, part: Rational) => compare(each, times(amount, exact(part))) <= 0;
  const [finest, ...coarser] = steps;
  const isUsable = finest && (compare(finest, reading) <= 0 || isWithin(finest, finestAtMost));
  return isUsable ? (coarser.findLast((each) => isWithin(each, coarseAtMost)) ?? finest) : undefined;
}

/** One part of an amount in US units: so many of a unit. */
interface Term {
  readonly value: Exact;
  readonly unit: string;
}

/**
 * An amount that has been rounded to a customary step: the number of its largest unit, and the rest.
 *
 *     35 3/8 oz -> "2", "lb 3 3/8 oz"      113 tsp -> "2 1/3", "US cups + 1 tsp"
 */
export function customaryParts(amount: Measure): { readonly number: string; readonly unit: string } {
  const dimension = dimensionOf(amount.unit);
  const [first, ...others] = termsOf(amount, customary[dimension]!.units);
  const rest = others.map((term) => joined(term).replace(systemWords.us, ''));
  const between = dimension === 'volume' ? systemWords.andMeasure : noBreak;
  return { number: fractionText(first!.value), unit: [unitText(first!), ...rest].join(between) };
}

/** "23 5/8": the nearest mark of a rule in inches, where a head says the unit. */
export function nearestSixteenth(length: Measure): string {
  return fractionText(roundTo(convert(length, 'in').value, exact('1/16')));
}

/** From the largest unit down, of each as much as its measures can tell. */
function termsOf(amount: Measure, units: readonly CustomaryUnit[]): readonly Term[] {
  const smallest = units.at(-1)!.unit;
  let left = convert(amount, smallest);
  const terms = units.flatMap(({ unit, from, parts }): readonly Term[] => {
    const { value } = convert(left, unit);
    if (value.compare(exact(from)) < 0) return [];
    const told = toldIn(value, parts);
    left = { value: left.value.sub(convert({ value: told, unit }, smallest).value), unit: smallest };
    return told.equals(zero) ? [] : [{ value: told, unit }];
  });
  return terms.length > 0 ? terms : [{ value: zero, unit: smallest }];
}

/** The whole ones, and the largest fraction that fits. */
function toldIn(value: Exact, parts: readonly Rational[]): Exact {
  const whole = value.floor();
  const part = parts.map(exact).find((each) => whole.add(each).compare(value) <= 0) ?? zero;
  return whole.add(part);
}

/** "2 1/4", kept on one line: a fraction that begins the next one would be read alone. */
function fractionText(value: Exact): string {
  return value.toFraction(true).replace(' ', noBreak);
}

function joined(term: Term): string {
  return `${fractionText(term.value)}${noBreak}${unitText(term)}`;
}

function unitText({ value, unit }: Term): string {
  const { many } = systemWords;
  return value.compare(1) > 0 && Object.hasOwn(many, unit) ? many[unit as keyof typeof many] : unit;
}
