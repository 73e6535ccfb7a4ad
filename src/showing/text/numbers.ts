import { Bug } from '../../core/diagnostic.ts';
import { type Exact, exact, exactText } from '../../core/quantity/exact.ts';
import { numberMarks } from '../../words/units.ts';

/**
 * A number as people read it: a zero before the point, none after it, thousands apart from five digits on.
 *
 *     1/2 -> "0.5"      7200 -> "7200"      12000 -> "12,000"
 *
 * @throws {Bug} When the decimal does not end: round it first.
 */
export function showNumber(x: Exact): string {
  const text = exactText(x);
  if (text.includes('/')) throw new Bug('a number was shown before it was rounded', { number: text });
  return withThousands(text);
}

/** As `showNumber`; a number whose decimal does not end stands as a fraction: "1/12", "2 1/3". */
export function showRatio(x: Exact): string {
  return exactText(x).includes('/') ? x.toFraction(true) : showNumber(x);
}

/** A whole number. */
export function showCount(n: number): string {
  return showNumber(exact(n));
}

/** A decimal's digits before the point in groups of three, where there are enough of them. */
export function withThousands(decimal: string): string {
  const [whole = '', ...fraction] = decimal.split('.');
  const digits = whole.replace('-', '').length;
  const grouped =
    digits < numberMarks.thousandsFrom ? whole : whole.replace(/\B(?=(\d{3})+$)/g, numberMarks.thousands);
  return [grouped, ...fraction].join(numberMarks.point);
}
