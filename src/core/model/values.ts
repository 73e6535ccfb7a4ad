/**
 * The plain values that front matter is made of. Everything here is JSON: exact numbers stand as text, so a
 * workspace can be written to a file, sent to a browser and read back without loss.
 */

/** An exact number as text: `"350"`, `"-3"`, `"5/2"`. In lowest terms, no decimals. */
export type Rational = string;

/** A calendar day, `2026-11-25`. */
export type IsoDate = string;

/** An exact number of a unit; the unit is a symbol of the table in `quantity/units.ts`, `''` for a count. */
export interface Quantity {
  readonly value: Rational;
  readonly unit: string;
}

/**
 * An amount as a guide gives it. A single amount has all three alike; in a range the upper end is bought and
 * the usual one costed (`usual` is the upper end where the author names none).
 */
export interface Amount {
  readonly least: Rational;
  readonly usual: Rational;
  readonly most: Rational;
  readonly unit: string;
}

/** A size of two sides (a piece of sheet: width x height) or three (a body), each with its own unit. */
export interface Size {
  readonly sides: readonly Quantity[];
}

/** `15 mm ± 3 mm`, `40–60 s`, `60 °C`: an amount to hit, with what is accepted round it. */
export interface Target {
  readonly is: Quantity;
  readonly least: Quantity;
  readonly most: Quantity;
  /** As the author wrote it, properly printed: `15 mm ± 3 mm`. */
  readonly text: string;
}

/**
 * A length of time: exact seconds of the clock (a range plans its upper end; `least` is the lower one), or
 * working days by the program's calendar.
 */
export type Duration =
  { readonly seconds: Rational; readonly least?: Rational } | { readonly workingDays: number };

/** How long something keeps: a time, or calendar months (which nothing else may use). */
export type Keeping = Duration | { readonly months: Rational };

/** An exact decimal of a currency (ISO 4217 code). `amount` is a `Rational`. */
export interface Money {
  readonly amount: Rational;
  readonly currency: string;
}

/** A value that may differ from level to level. When it does, every level of the guide is a key. */
export type Varied<T> = T | ByLevel<T>;
export interface ByLevel<T> {
  readonly byLevel: Readonly<Record<string, T>>;
}

/** What remains of a type once a level is chosen: the same shape, without maps by level. */
export type AtLevel<T> =
  T extends ByLevel<infer U>
    ? AtLevel<U>
    : T extends readonly (infer E)[]
      ? readonly AtLevel<E>[]
      : T extends object
        ? { readonly [K in keyof T]: AtLevel<T[K]> }
        : T;
