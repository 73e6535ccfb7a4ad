import { describe, expect, it } from 'vitest';
import { readAmount, readQuantity, readTarget } from '../../../src/core/quantity/read.ts';
import { problemOf, valueOf } from './readings.ts';

describe('one amount', () => {
  it.each([
    ['350 g', '350', 'g'],
    ['350g', '350', 'g'],
    ['1.5 L', '3/2', 'L'],
    ['1.50 l', '3/2', 'L'],
    ['2 1/2 in', '5/2', 'in'],
    ['2½ in', '5/2', 'in'],
    ['12 1/2 in', '25/2', 'in'],
    ['1⁄2 in', '1/2', 'in'],
    ['-1/2 °C', '-1/2', '°C'],
    ['2"', '2', 'in'],
    ['3 ft 6 in', '42', 'in'],
    [`3'6"`, '42', 'in'],
    ['3 ft and 6 in', '42', 'in'],
    ['1 lb 4 oz', '20', 'oz'],
    ['1/2 US tsp', '1/2', 'US tsp'],
    ['2 us cups', '2', 'US cup'],
    ['1 imperial pint', '1', 'imp pint'],
    ['2 metric tablespoons', '2', 'metric tbsp'],
    ['12', '12', ''],
    ['5 m2', '5', 'm²'],
    ['30 cc', '30', 'cm³'],
    ['100 ul', '100', 'µL'],
    ['4 C', '4', '°C'],
    ['-20 °C', '-20', '°C'],
    ['−20 C', '-20', '°C'],
    ['140 °F', '140', '°F'],
    ['10 %', '10', '%'],
    ['3 N', '3', 'N'],
    ['10 grains', '10', 'grain'],
    ['  7\u00a0 g ', '7', 'g'],
  ])('reads %s', (text, value, unit) => {
    expect(valueOf(readQuantity(text))).toEqual({ value, unit });
  });

  it.each([
    ['1 cup', '1 US cup / 1 metric cup'],
    ['2 Tbsp', '2 US tbsp / 2 metric tbsp'],
    ['1/2 tsp', '1/2 US tsp / 1/2 metric tsp'],
    ['1 pint', '1 US pint / 1 imp pint'],
    ['2 fl oz', '2 US fl oz / 2 imp fl oz'],
    ['1 gallon', '1 US gallon / 1 imp gallon'],
    ['1 galon', '1 US gallon / 1 imp gallon'],
    ['1 quart', '1 US quart / 1 imp quart'],
    ['1 imp cup', '1 US cup / 1 metric cup'],
    ['1 uk cup', '1 US cup / 1 metric cup'],
  ])('asks of %s whose measure it is', (text, choices) => {
    const [code, facts] = problemOf(readQuantity(text));
    expect(code).toBe('unit-system-missing');
    expect(facts['choices']).toBe(choices);
  });

  it.each([
    ['1,5 g', 'decimal-comma', { point: '1.5 g', thousands: '15 g' }],
    ['1,500 g', 'decimal-comma', { point: '1.500 g', thousands: '1500 g' }],
    ['1.200,50 g', 'decimal-comma', { point: '1200.50 g', thousands: '1.20050 g' }],
    ['0,5 L', 'decimal-comma', { point: '0.5 L', thousands: '5 L' }],
    ['0,05 L', 'decimal-comma', { point: '0.05 L', thousands: '5 L' }],
    ['-0,5 °C', 'decimal-comma', { point: '-0.5 °C', thousands: '-5 °C' }],
    ['1e3 g', 'amount-unreadable.exponent', { number: '1e3' }],
    ['1_000 g', 'amount-unreadable.underscore', { number: '1_000' }],
    ['007 g', 'amount-unreadable.leading-zero', { number: '007' }],
    ['.5 g', 'amount-unreadable.leading-point', { number: '.5' }],
    ['1 000 g', 'amount-unreadable.grouped', { number: '1 000' }],
    ['1-1/2 in', 'amount-unreadable.mixed-hyphen', { number: '1 1/2', meant: '1 1/2 in' }],
    [`${'9'.repeat(50)} g`, 'amount-unreadable.too-long', { number: '9'.repeat(50) }],
    ['5 g of felt', 'amount-unreadable.extra', { amount: '5 g', extra: 'of felt' }],
    ['some', 'amount-unreadable', {}],
    ['', 'amount-unreadable', {}],
    ['+5 g', 'amount-unreadable', {}],
    ['about 5 g', 'amount-unreadable.about', { amount: '5 g' }],
    ['ca. 2 cups', 'unit-system-missing', { unit: 'cups', choices: '2 US cup / 2 metric cup' }],
    ['a 1/2 in', 'amount-unreadable', {}],
    // parts of an amount are of one kind, each smaller than the one before, and each with its unit
    ['2 h 30 g', 'amount-unreadable', {}],
    ['2 h 30', 'amount-unreadable', {}],
    ['2 h 1,5 min', 'amount-unreadable', {}],
    ['30 min 2 h', 'amount-unreadable', {}],
    ['1/0 g', 'amount-unreadable', {}],
    ['5..3 g', 'amount-unreadable', {}],
    ['-5 g', 'amount-negative', {}],
    ['12:30', 'clock-time-as-amount', { clock: '12:30' }],
    ['3 sheets', 'unit-unknown', { unit: 'sheets', number: '3' }],
    ['3 sheets to 5', 'unit-unknown', { unit: 'sheets', number: '3' }],
    ['3 sheets ±', 'unit-unknown', { unit: 'sheets', number: '3' }],
    ['3 A4 sheets', 'amount-unreadable', {}],
    // a word of so few letters is near to too many others
    ['5 gk', 'unit-unknown', { unit: 'gk', number: '5' }],
    ['5 gg', 'unit-unknown', { unit: 'gg', number: '5' }],
    ['5 cap', 'unit-unknown', { unit: 'cap', number: '5' }],
    ['5 mi', 'unit-unknown', { unit: 'mi', number: '5' }], // miles, not minutes
    ['5 mgl', 'unit-unknown', { unit: 'mgl', number: '5' }],
    ['5 ML', 'unit-unknown.near', { unit: 'ML', number: '5', nearest: 'mL' }],
    ['5 gramms', 'unit-unknown.near', { unit: 'gramms', number: '5', nearest: 'g' }],
    ['10 gr', 'unit-ambiguous', { unit: 'gr', choices: '10 g / 10 grain' }],
    ['8–14 g', 'range-not-here', {}],
    ['8 g ± 1 g', 'range-not-here.tolerance', {}],
  ])('says what is wrong with %s', (text, code, facts) => {
    expect(problemOf(readQuantity(text))).toEqual([code, facts]);
  });

  it('always says what the author wrote', () => {
    const reading = readQuantity('  1,5 g ');
    expect(!reading.ok && reading.problem.facts['text']).toBe('1,5 g');
  });
});

describe('an amount that may be a range', () => {
  it.each([
    ['350 g', undefined, ['350', '350', '350', 'g']],
    ['8–14 g', undefined, ['8', '14', '14', 'g']],
    ['8-14g', undefined, ['8', '14', '14', 'g']],
    ['8  to \t14 g', undefined, ['8', '14', '14', 'g']],
    ['8 to 14 g', '10 g', ['8', '10', '14', 'g']],
    ['8 g - 14 g', '0.01 kg', ['8', '10', '14', 'g']],
    ['1 cm – 15 mm', undefined, ['10', '15', '15', 'mm']],
    ['-20 to -10 °C', undefined, ['-20', '-10', '-10', '°C']],
    ['2–3', undefined, ['2', '3', '3', '']],
    ['-20 to 10 °C', '0 °C', ['-20', '0', '10', '°C']],
  ])('reads %s, usually %s', (text, usual, [least, costed, most, unit]) => {
    expect(valueOf(readAmount(text, usual))).toEqual({ least, usual: costed, most, unit });
  });

  it.each([
    ['14–8 g', undefined, 'range-reversed', { least: '14 g', most: '8 g' }],
    ['5 g to 10 mL', undefined, 'range-mixed', { first: '5 g', second: '10 mL' }],
    ['1–2 h 30 min', undefined, 'range-mixed', { first: '1', second: '150 min' }],
    ['8–14 g', '20 g', 'usual-outside-range', { usual: '20 g', least: '8 g', most: '14 g' }],
    ['8–14 g', '10 mL', 'usual-outside-range.unit', { usual: '10 mL', least: '8 g', most: '14 g' }],
    ['8 g ± 1 g', undefined, 'range-not-here.tolerance', {}],
    ['8–1,4 g', undefined, 'decimal-comma', { point: '1.4 g', thousands: '14 g' }],
  ])('says what is wrong with %s, usually %s', (text, usual, code, facts) => {
    expect(problemOf(readAmount(text, usual))).toEqual([code, facts]);
  });
});

describe('a target', () => {
  it.each([
    // 12 - 1, 12 + 1
    ['12 mm ± 1 mm', ['11', '12', '13', 'mm'], '12 mm ± 1 mm'],
    ['12 +/- 1 mm', ['11', '12', '13', 'mm'], '12 mm ± 1 mm'],
    // 3/2 - 1/8 = 11/8, 3/2 + 1/8 = 13/8
    ['1 1/2 in +/- 1/8 in', ['11/8', '3/2', '13/8', 'in'], '1 1/2 in ± 1/8 in'],
    // a tolerance in the other system: 25.4 mm ± 1/10 in = 2.54 mm
    ['25.4 mm ± 0.1 in', ['1143/50', '127/5', '1397/50', 'mm'], '25.4 mm ± 0.1 in'],
    // differences of temperature know no offset: 9 °F are 5 °C
    ['60 °C ± 9 °F', ['55', '60', '65', '°C'], '60 °C ± 9 °F'],
    ['100 g ± 5 %', ['95', '100', '105', 'g'], '100 g ± 5 %'],
    ['2 h 30 min ± 10 min', ['140', '150', '160', 'min'], '2 h 30 min ± 10 min'],
    ['40–60 s', ['40', '50', '60', 's'], '40–60 s'],
    ['1 min to 90 s', ['60', '75', '90', 's'], '1 min–90 s'],
    ['1 h 30 min – 100 min', ['90', '95', '100', 'min'], '1 h 30 min–100 min'],
    ['60 °C', ['60', '60', '60', '°C'], '60 °C'],
  ])('reads %s', (text, [least, is, most, unit], printed) => {
    expect(valueOf(readTarget(text))).toEqual({
      is: { value: is, unit },
      least: { value: least, unit },
      most: { value: most, unit },
      text: printed,
    });
  });

  it('refuses a tolerance of another kind', () => {
    expect(problemOf(readTarget('12 mm ± 1 g'))).toEqual(['range-mixed', { first: '12 mm', second: '1 g' }]);
  });
});
