import { Bug } from '../diagnostic.ts';
import type { Rational } from '../model/values.ts';

export type Dimension =
  'length' | 'area' | 'volume' | 'mass' | 'time' | 'force' | 'temperature' | 'share' | 'count';

export interface Unit {
  /** The one spelling that is printed. */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** So many of the dimension's base: mm, mm², mL, g, s, N, °C, 1. Exact. */
  readonly factor: Rational;
  /** Added before the factor applies: °F alone. */
  readonly offset?: Rational;
  readonly system: 'SI' | 'US' | 'imperial' | 'metric';
}

const SI = (symbol: string, dimension: Dimension, factor: Rational): Unit => ({
  symbol,
  dimension,
  factor,
  system: 'SI',
});

const US = (symbol: string, dimension: Dimension, factor: Rational): Unit => ({
  ...SI(symbol, dimension, factor),
  system: 'US',
});

/** A kitchen measure: never without its system, since systems differ by up to 20 %. */
const kitchen = (system: Unit['system'], symbol: string, millilitres: Rational): Unit => ({
  ...SI(`${system === 'imperial' ? 'imp' : system} ${symbol}`, 'volume', millilitres),
  system,
});

/**
 * Every unit an author may write, as it is printed. Factors are exact. What else a keyboard types: `spellings.ts`.
 *
 * @source Inch and pound: international yard and pound agreement, 1959 (25.4 mm; 453.59237 g). US gallon: 231 in³,
 * NIST Handbook 44 App. C. Imperial gallon: 4.54609 L, UK Units of Measurement Regulations 1995. Metric cup,
 * tablespoon and teaspoon (250, 15, 5 mL): common practice, from memory. °F: NIST SP 811 (2008) App. B.
 */
export const units: readonly Unit[] = [
  SI('mm', 'length', '1'),
  SI('cm', 'length', '10'),
  SI('dm', 'length', '100'),
  SI('m', 'length', '1000'),
  SI('km', 'length', '1000000'),
  SI('µm', 'length', '1/1000'),
  US('in', 'length', '127/5'),
  US('ft', 'length', '1524/5'),
  US('yd', 'length', '4572/5'),

  SI('mm²', 'area', '1'),
  SI('cm²', 'area', '100'),
  SI('dm²', 'area', '10000'),
  SI('m²', 'area', '1000000'),
  US('in²', 'area', '16129/25'),
  US('ft²', 'area', '2322576/25'),

  SI('mL', 'volume', '1'),
  SI('L', 'volume', '1000'),
  SI('µL', 'volume', '1/1000'),
  SI('cL', 'volume', '10'),
  SI('dL', 'volume', '100'),
  SI('mm³', 'volume', '1/1000'),
  SI('cm³', 'volume', '1'),
  SI('dm³', 'volume', '1000'),
  SI('m³', 'volume', '1000000'),
  US('in³', 'volume', '2048383/125000'),
  kitchen('US', 'fl oz', '473176473/16000000'),
  kitchen('US', 'pint', '473176473/1000000'),
  kitchen('US', 'quart', '473176473/500000'),
  kitchen('US', 'gallon', '473176473/125000'),
  kitchen('US', 'cup', '473176473/2000000'),
  kitchen('US', 'tbsp', '473176473/32000000'),
  kitchen('US', 'tsp', '157725491/32000000'),
  kitchen('imperial', 'fl oz', '454609/16000'),
  kitchen('imperial', 'pint', '454609/800'),
  kitchen('imperial', 'quart', '454609/400'),
  kitchen('imperial', 'gallon', '454609/100'),
  kitchen('metric', 'cup', '250'),
  kitchen('metric', 'tbsp', '15'),
  kitchen('metric', 'tsp', '5'),

  SI('g', 'mass', '1'),
  SI('kg', 'mass', '1000'),
  SI('mg', 'mass', '1/1000'),
  SI('µg', 'mass', '1/1000000'),
  US('grain', 'mass', '6479891/100000000'),
  US('oz', 'mass', '45359237/1600000'),
  US('lb', 'mass', '45359237/100000'),

  SI('s', 'time', '1'),
  SI('min', 'time', '60'),
  SI('h', 'time', '3600'),
  SI('d', 'time', '86400'),
  SI('weeks', 'time', '604800'),

  SI('N', 'force', '1'),
  SI('mN', 'force', '1/1000'),
  SI('kN', 'force', '1000'),
  SI('°C', 'temperature', '1'),
  { ...US('°F', 'temperature', '5/9'), offset: '-32' },
  SI('%', 'share', '1/100'),
  SI('', 'count', '1'),
];

const bySymbol = new Map(units.map((unit) => [unit.symbol, unit]));

/** @throws {Bug} For a symbol that is not in the table: reading should have refused it. */
export function unitOf(symbol: string): Unit {
  const unit = bySymbol.get(symbol);
  if (!unit) throw new Bug('no such unit', { symbol });
  return unit;
}

export function dimensionOf(symbol: string): Dimension {
  return unitOf(symbol).dimension;
}
