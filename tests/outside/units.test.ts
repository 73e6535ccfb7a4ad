import { describe, expect, it } from 'vitest';
import { ceil, exact, floor, rational } from '../../src/core/quantity/exact.ts';
import { convert, measure } from '../../src/core/quantity/quantity.ts';
import { readQuantity } from '../../src/core/quantity/read.ts';
import reference from './data/units.json' with { type: 'json' };

/**
 * The case file's unit as an author writes it, and in which unit the file counts.
 *
 * Sources: NIST SP 811 (2008) App. B; NIST Handbook 44 App. C; the international yard and pound agreement of 1959;
 * UK Units of Measurement Regulations 1995 (gallon 4.54609 L).
 */
const written: Readonly<Record<string, string>> = {
  in: '1 in',
  yd: '1 yd',
  in2: '1 in²',
  ft2: '1 ft²',
  lb_av: '1 lb',
  grain: '1 grain',
  US_gal: '1 US gallon',
  US_pt: '1 US pint',
  US_cup: '1 US cup',
  US_fl_oz: '1 US fl oz',
  US_tbsp: '1 US tbsp',
  imp_gal: '1 imp gallon',
  imp_qt: '1 imp quart',
  metric_cup: '1 metric cup',
};
const unitOf: Readonly<Record<string, string>> = { cm2: 'cm²' };

/**
 * Units that no author may write: the dry pint of NIST Handbook 44 App. C (33.6003125 in³) and the rounded measures of
 * US food labels, 21 CFR 101.9(b)(5)(viii). They are worked out from units that the table has.
 */
const workedOut: Readonly<Record<string, [of: string, times: string]>> = {
  US_dry_pt: ['in³', '33.6003125'],
  US_label_cup: ['metric tbsp', '16'],
  US_label_tbsp: ['metric tbsp', '1'],
  US_label_tsp: ['metric tsp', '1'],
  US_label_fl_oz: ['metric tbsp', '2'],
  US_label_oz: ['g', '28'],
};

describe('every unit is exactly what its standard says', () => {
  it.each(reference.cases)('1 $unit is $exact $in', ({ unit, exact: decimal, fraction, in: inUnit }) => {
    const reading = unit in written ? readQuantity(written[unit]!) : undefined;
    const [symbol, times] = workedOut[unit] ?? ['', ''];
    const one = reading?.ok
      ? measure(reading.value)
      : measure({ value: rational(exact(times)), unit: symbol });
    const value = convert(one, unitOf[inUnit] ?? inUnit).value;
    expect(rational(value)).toBe(rational(exact(decimal)));
    expect(rational(value)).toBe(rational(exact(fraction)));
  });

  it('looked at each case of the file', () => {
    expect(reference.cases.map(({ unit }) => unit).sort()).toEqual(
      [...Object.keys(written), ...Object.keys(workedOut)].sort(),
    );
  });
});

// NIST SP 811 (2008), App. B.8: t/°C = (t/°F - 32) / 1.8
it.each(reference.meta.temperatureF_C)('%d °F is %d °C', (fahrenheit, celsius) => {
  const value = convert(measure({ value: rational(exact(String(fahrenheit))), unit: '°F' }), '°C').value;
  const scaled = value.mul(1_000_000_000);
  const expected = exact(celsius.toFixed(12)).mul(1_000_000_000);
  expect(floor(expected.sub(scaled).abs())).toBe(0);
  expect(ceil(scaled.mul(9))).toBe(floor(scaled.mul(9)));
});

// NIST SP 811 (2008), App. B: a difference of 1 °F is 5/9 °C, without offset
it('a difference of temperature knows no offset', () => {
  const at = (value: string) => convert(measure({ value, unit: '°F' }), '°C').value;
  expect(rational(at('33').sub(at('32')))).toBe(reference.meta.temperatureIntervalFactor.split(' ')[0]);
});
