import type { Amount, Quantity, Target } from '../model/values.ts';
import type { Exact } from './exact.ts';
import { exact, rational } from './exact.ts';
import { printQuantity } from './print.ts';
import type { Reading } from './problem.ts';
import { andThen, read, refuse } from './problem.ts';
import type { Measure } from './quantity.ts';
import { compare, convert, sameDimension } from './quantity.ts';
import type { Expression, Term } from './scan.ts';
import { termFact, unitOfTerm, wholeExpression } from './scan.ts';

/** One amount: `350 g`, `2 1/2 in`, `-20 °C`, `12`. A range or a tolerance has no place here. */
export function readQuantity(text: string): Reading<Quantity> {
  return andThen(wholeExpression(text), ({ first, join }) => {
    if (!join) return read(quantityOf(first));
    return refuse(join === 'range' ? 'range-not-here' : 'range-not-here.tolerance', text);
  });
}

/**
 * An amount that may be a range: `350 g`, `8–14 g`, `8 to 14 g`.
 *
 * @param usual  What is costed, of a range: within it. The upper end where left out.
 */
export function readAmount(text: string, usual?: string): Reading<Amount> {
  return andThen(wholeExpression(text), (written) => {
    if (written.join === 'tolerance') return refuse('range-not-here.tolerance', text);
    const ends = rangeOf(text, written);
    if (!ends.ok || usual === undefined) return ends;
    return andThen(readQuantity(usual), (quantity) => withUsual(ends.value, quantity, text));
  });
}

/** The ends of a range in the unit of its upper end, the upper end being the usual one. */
export function rangeOf(text: string, { first, second }: Expression): Reading<Amount> {
  const [low, high] = [measureOf(first), measureOf(second ?? first)];
  const facts = { least: termFact(first), most: termFact(second ?? first) };
  if (!sameDimension(low.unit, high.unit)) {
    return refuse('range-mixed', text, { first: facts.least, second: facts.most });
  }
  if (compare(low, high) > 0) return refuse('range-reversed', text, facts);
  const most = rational(high.value);
  return read({ least: rational(convert(low, high.unit).value), usual: most, most, unit: high.unit });
}

function withUsual(range: Amount, usual: Quantity, text: string): Reading<Amount> {
  const { least, most, unit } = range;
  const facts = {
    usual: printQuantity(usual),
    least: printQuantity({ value: least, unit }),
    most: printQuantity({ value: most, unit }),
  };
  if (!sameDimension(usual.unit, unit)) return refuse('usual-outside-range.unit', text, facts);
  const value = convert({ value: exact(usual.value), unit: usual.unit }, unit).value;
  const inside = value.gte(exact(least)) && value.lte(exact(most));
  return inside ? read({ ...range, usual: rational(value) }) : refuse('usual-outside-range', text, facts);
}

/** An amount to hit: `15 mm ± 3 mm`, `100 g ± 5 %`, `40–60 s` (its middle), `60 °C` alone. */
export function readTarget(text: string): Reading<Target> {
  return andThen(wholeExpression(text), (written) => {
    if (written.join === 'tolerance') return targetWithin(text, written.first, written.second!);
    return andThen(rangeOf(text, written), ({ least, most, unit }) =>
      read({
        is: { value: rational(exact(least).add(exact(most)).div(2)), unit },
        least: { value: least, unit },
        most: { value: most, unit },
        text: written.join ? rangeText(written) : written.first.written,
      }),
    );
  });
}

function targetWithin(text: string, middle: Term, tolerance: Term): Reading<Target> {
  const unit = unitOfTerm(middle).symbol;
  const width = toleranceIn(middle, tolerance);
  if (!width) return refuse('range-mixed', text, { first: termFact(middle), second: termFact(tolerance) });
  return read({
    is: quantityOf(middle),
    least: { value: rational(middle.value.sub(width)), unit },
    most: { value: rational(middle.value.add(width)), unit },
    text: `${middle.written} ± ${tolerance.written}`,
  });
}

/** The tolerance as a difference in the unit of the target: 9 °F are 5 °C, and a share is of the target. */
function toleranceIn(middle: Term, tolerance: Term): Exact | undefined {
  const [unit, other] = [unitOfTerm(middle), unitOfTerm(tolerance)];
  if (unit.dimension === other.dimension)
    return tolerance.value.mul(exact(other.factor)).div(exact(unit.factor));
  return other.symbol === '%' ? middle.value.abs().mul(tolerance.value).div(100) : undefined;
}

/** `40–60 s`, or both units where they differ: `1 min–90 s`. */
function rangeText({ first, second }: Expression): string {
  return first.unit === second!.unit && !first.inParts
    ? `${first.number}–${second!.written}`
    : `${first.written}–${second!.written}`;
}

function quantityOf(term: Term): Quantity {
  return { value: rational(term.value), unit: unitOfTerm(term).symbol };
}

function measureOf(term: Term): Measure {
  return { value: term.value, unit: unitOfTerm(term).symbol };
}
