import Fraction from 'fraction.js';
import { Bug } from '../diagnostic.ts';
import type { Rational } from '../model/values.ts';

/** An exact rational number. Made by `exact` alone, so that no float ever becomes one. */
export type Exact = Fraction;

/**
 * The exact number of `"5/2"`, `"350"`, `"-3"`, `"25.4"`, or of a whole number.
 *
 * @throws {Bug} For any other spelling, and for a number that is not whole and safe.
 */
export function exact(number: Rational | number): Exact {
  if (typeof number === 'string' ? !plain.test(number) : !Number.isSafeInteger(number)) {
    throw new Bug('not an exact number', { number });
  }
  return new Fraction(number);
}
const plain = /^-?\d+(\.\d+|\/0*[1-9]\d*)?$/;

export const zero: Exact = exact(0);
export const one: Exact = exact(1);

/**
 * The largest number of which all are whole multiples; one where all are zero.
 *
 *     3/2, 2  ->  1/2
 */
export function commonMeasure(numbers: readonly Exact[]): Exact {
  const found = numbers.reduce((measure, number) => measure.gcd(number), zero);
  return found.n === 0n ? one : found;
}

/** The number as plain text in lowest terms: `"5/2"`, `"350"`. */
export function rational(x: Exact): Rational {
  const whole = `${x.s < 0n ? '-' : ''}${x.n}`;
  return x.d === 1n ? whole : `${whole}/${x.d}`;
}

/** The number as a decimal where that ends (`"2.5"`), else as a fraction (`"103/30"`). */
export function exactText(x: Exact): string {
  const places = decimalPlaces(x.d);
  if (places === undefined) return rational(x);
  return decimalText(x.s * x.n * (10n ** BigInt(places) / x.d), places);
}

/** `12345` with 2 places is `"123.45"`. */
export function decimalText(digits: bigint, places: number): string {
  const text = (digits < 0n ? -digits : digits).toString().padStart(places + 1, '0');
  const sign = digits < 0n ? '-' : '';
  return places === 0 ? sign + text : `${sign}${text.slice(0, -places)}.${text.slice(-places)}`;
}

/** How many decimal places a fraction over `below` needs; `undefined` where it never ends. */
function decimalPlaces(below: bigint): number | undefined {
  const [twos, withoutTwos] = divideOut(below, 2n);
  const [fives, rest] = divideOut(withoutTwos, 5n);
  return rest === 1n ? Math.max(twos, fives) : undefined;
}

function divideOut(number: bigint, prime: bigint): [times: number, rest: bigint] {
  let times = 0;
  for (; number % prime === 0n; number /= prime) times++;
  return [times, number];
}

/** The least whole number that is not below `x`. @throws {Bug} Beyond the safe whole numbers. */
export function ceil(x: Exact): number {
  return safe(x.ceil());
}

/** The greatest whole number that is not above `x`. @throws {Bug} Beyond the safe whole numbers. */
export function floor(x: Exact): number {
  return safe(x.floor());
}

function safe(whole: Exact): number {
  const number = Number(whole.s * whole.n);
  if (!Number.isSafeInteger(number)) throw new Bug('too large a whole number', { number: rational(whole) });
  return number;
}
