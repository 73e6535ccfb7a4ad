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
  /** What a keyboard types; the symbol is always among them. */
  readonly spellings: readonly string[];
}

const SI = (symbol: string, dimension: Dimension, factor: Rational, ...also: string[]): Unit => ({
  symbol,
  dimension,
  factor,
  system: 'SI',
  spellings: [symbol, ...also],
});

const US = (symbol: string, dimension: Dimension, factor: Rational, ...also: string[]): Unit => ({
  ...SI(symbol, dimension, factor, ...also),
  system: 'US',
});

/** A kitchen measure: never without its system, since systems differ by up to 20 %. */
const kitchen = (system: KitchenSystem, symbol: string, millilitres: Rational, ...also: string[]): Unit => ({
  symbol: `${prefixes[system][0]} ${symbol}`,
  dimension: 'volume',
  factor: millilitres,
  system,
  spellings: prefixes[system].flatMap((prefix) => also.map((name) => `${prefix} ${name}`)),
});

type KitchenSystem = 'US' | 'imperial' | 'metric';
const prefixes: Readonly<Record<KitchenSystem, readonly string[]>> = {
  US: ['US', 'U.S.', 'us'],
  imperial: ['imp', 'imp.', 'imperial', 'UK'],
  metric: ['metric'],
};

const cup = ['cup', 'cups'] as const;
const tablespoon = ['tbsp', 'tbsps', 'tbs', 'tablespoon', 'tablespoons'] as const;
const teaspoon = ['tsp', 'tsps', 'teaspoon', 'teaspoons'] as const;
const fluidOunce = ['fl oz', 'fl. oz.', 'fl oz.', 'floz', 'fluid ounce', 'fluid ounces'] as const;
const pint = ['pint', 'pints', 'pt'] as const;
const quart = ['quart', 'quarts', 'qt'] as const;
const gallon = ['gallon', 'gallons', 'gal'] as const;

/**
 * Every unit an author may write. Factors are exact.
 *
 * @source Inch and pound: international yard and pound agreement, 1959 (25.4 mm; 453.59237 g). US gallon: 231 in³,
 * NIST Handbook 44 App. C. Imperial gallon: 4.54609 L, UK Units of Measurement Regulations 1995. Metric cup,
 * tablespoon and teaspoon (250, 15, 5 mL): common practice, from memory. °F: NIST SP 811 (2008) App. B.
 */
export const units: readonly Unit[] = [
  SI('mm', 'length', '1', 'millimetre', 'millimetres', 'millimeter', 'millimeters'),
  SI('cm', 'length', '10', 'centimetre', 'centimetres', 'centimeter', 'centimeters'),
  SI('dm', 'length', '100'),
  SI('m', 'length', '1000', 'metre', 'metres', 'meter', 'meters'),
  SI('km', 'length', '1000000'),
  SI('µm', 'length', '1/1000', 'μm', 'um', 'micrometre', 'micrometres', 'micrometer', 'micrometers'),
  US('in', 'length', '127/5', 'in.', 'inch', 'inches', '"', '″'),
  US('ft', 'length', '1524/5', 'ft.', 'foot', 'feet', "'", '′'),
  US('yd', 'length', '4572/5', 'yd.', 'yard', 'yards'),

  SI('mm²', 'area', '1', 'mm2', 'mm^2', 'sq mm'),
  SI('cm²', 'area', '100', 'cm2', 'cm^2', 'sq cm'),
  SI('dm²', 'area', '10000', 'dm2', 'dm^2'),
  SI('m²', 'area', '1000000', 'm2', 'm^2', 'sq m'),
  US('in²', 'area', '16129/25', 'in2', 'in^2', 'sq in'),
  US('ft²', 'area', '2322576/25', 'ft2', 'ft^2', 'sq ft'),

  SI('mL', 'volume', '1', 'ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'),
  SI('L', 'volume', '1000', 'l', 'litre', 'litres', 'liter', 'liters'),
  SI('µL', 'volume', '1/1000', 'μL', 'uL', 'µl', 'μl', 'ul', 'microlitre', 'microlitres', 'microliters'),
  SI('cL', 'volume', '10', 'cl', 'centilitre', 'centilitres'),
  SI('dL', 'volume', '100', 'dl', 'decilitre', 'decilitres'),
  SI('mm³', 'volume', '1/1000', 'mm3', 'mm^3', 'cu mm'),
  SI('cm³', 'volume', '1', 'cm3', 'cm^3', 'cc', 'cu cm'),
  SI('dm³', 'volume', '1000', 'dm3', 'dm^3'),
  SI('m³', 'volume', '1000000', 'm3', 'm^3', 'cu m'),
  US('in³', 'volume', '2048383/125000', 'in3', 'in^3', 'cu in'),
  kitchen('US', 'fl oz', '473176473/16000000', ...fluidOunce),
  kitchen('US', 'pint', '473176473/1000000', ...pint),
  kitchen('US', 'quart', '473176473/500000', ...quart),
  kitchen('US', 'gallon', '473176473/125000', ...gallon),
  kitchen('US', 'cup', '473176473/2000000', ...cup),
  kitchen('US', 'tbsp', '473176473/32000000', ...tablespoon),
  kitchen('US', 'tsp', '157725491/32000000', ...teaspoon),
  kitchen('imperial', 'fl oz', '454609/16000', ...fluidOunce),
  kitchen('imperial', 'pint', '454609/800', ...pint),
  kitchen('imperial', 'quart', '454609/400', ...quart),
  kitchen('imperial', 'gallon', '454609/100', ...gallon),
  kitchen('metric', 'cup', '250', ...cup),
  kitchen('metric', 'tbsp', '15', ...tablespoon),
  kitchen('metric', 'tsp', '5', ...teaspoon),

  SI('g', 'mass', '1', 'gm', 'gram', 'grams', 'gramme', 'grammes'),
  SI('kg', 'mass', '1000', 'Kg', 'kilo', 'kilos', 'kilogram', 'kilograms'),
  SI('mg', 'mass', '1/1000', 'milligram', 'milligrams'),
  SI('µg', 'mass', '1/1000000', 'μg', 'ug', 'mcg', 'microgram', 'micrograms'),
  US('grain', 'mass', '6479891/100000000', 'grains'),
  US('oz', 'mass', '45359237/1600000', 'oz.', 'ounce', 'ounces'),
  US('lb', 'mass', '45359237/100000', 'lb.', 'lbs', 'lbs.', 'pound', 'pounds'),

  SI('s', 'time', '1', 'sec', 'secs', 'second', 'seconds'),
  SI('min', 'time', '60', 'min.', 'mins', 'minute', 'minutes'),
  SI('h', 'time', '3600', 'hr', 'hrs', 'hour', 'hours'),
  SI('d', 'time', '86400', 'day', 'days'),
  SI('weeks', 'time', '604800', 'week', 'wk', 'wks'),

  SI('N', 'force', '1', 'newton', 'newtons'),
  SI('mN', 'force', '1/1000'),
  SI('kN', 'force', '1000'),
  SI('°C', 'temperature', '1', '° C', 'ºC', '℃', 'C', 'deg C', 'degC', 'degrees C', 'Celsius'),
  {
    ...US('°F', 'temperature', '5/9', '° F', 'ºF', '℉', 'F', 'deg F', 'degF', 'degrees F', 'Fahrenheit'),
    offset: '-32',
  },
  SI('%', 'share', '1/100', 'percent', 'per cent'),
  { symbol: '', dimension: 'count', factor: '1', system: 'SI', spellings: [''] },
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
