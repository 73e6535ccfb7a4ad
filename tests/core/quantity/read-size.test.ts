import { describe, expect, it } from 'vitest';
import { readHolding, readSheets, readSize } from '../../../src/core/quantity/read.ts';
import { problemOf, valueOf } from './readings.ts';

const mm = (...values: string[]) => ({ sides: values.map((value) => ({ value, unit: 'mm' })) });

describe('a size', () => {
  it.each([
    ['150 mm x 100 mm', mm('150', '100')],
    ['150 mm × 100 mm', mm('150', '100')],
    ['150 x 100 mm', mm('150', '100')],
    ['150mmx100mm', mm('150', '100')],
    ['220 mm x 110 mm x 60 mm', mm('220', '110', '60')],
    ['220 × 110 × 60 mm', mm('220', '110', '60')],
    ['450 mm', mm('450')],
    [
      '2 1/2 in X 3 cm',
      {
        sides: [
          { value: '5/2', unit: 'in' },
          { value: '3', unit: 'cm' },
        ],
      },
    ],
  ])('reads %s', (text, size) => {
    expect(valueOf(readSize(text))).toEqual(size);
  });

  it.each([
    ['150 x 100', 'unit-missing.length', {}],
    ['5 x 450 mm x 300 mm', 'unit-missing.length', {}],
    ['150 g x 3 mm', 'unit-wrong.length', { unit: 'g' }],
    ['0 mm x 3 mm', 'amount-zero', {}],
    ['-5 mm x 3 mm', 'amount-negative', {}],
    ['3 mm x -5 mm', 'amount-negative', {}],
    ['5 to 8 mm x 3 mm', 'range-not-here', {}],
    ['5 mm - 8 mm x 3 mm', 'range-not-here', {}],
    ['5 mm of felt x 3 mm', 'amount-unreadable.extra', { amount: '5 mm', extra: 'of felt' }],
    ['5 mm felt to cut x 3 mm', 'amount-unreadable.extra', { amount: '5 mm', extra: 'felt to cut' }],
    ['5 mm A4 x 3 mm', 'amount-unreadable', {}],
    ['5 mm / wide x 3 mm', 'amount-unreadable', {}],
    ['1 mm x 2 mm x 3 mm x 4 mm', 'amount-unreadable.size', {}],
    ['1,5 mm x 3 mm', 'decimal-comma', { point: '1.5 mm', thousands: '15 mm' }],
    ['5 mq x 3 mm', 'unit-unknown', { unit: 'mq', number: '5' }],
    ['A4', 'amount-unreadable', {}],
  ])('says what is wrong with %s', (text, code, facts) => {
    expect(problemOf(readSize(text))).toEqual([code, facts]);
  });
});

describe('what a pack holds', () => {
  it.each([
    ['500 g', { count: 1, each: { value: '500', unit: 'g' } }],
    ['50', { count: 1, each: { value: '50', unit: '' } }],
    ['450 mm x 300 mm', { count: 1, each: mm('450', '300') }],
    ['5 x 450 mm x 300 mm', { count: 5, each: mm('450', '300') }],
    ['12 x 50 mL', { count: 12, each: { value: '50', unit: 'mL' } }],
    ['6 × 100', { count: 6, each: { value: '100', unit: '' } }],
  ])('reads %s', (text, holding) => {
    expect(valueOf(readHolding(text))).toEqual(holding);
  });

  it.each([
    ['0 g', 'amount-zero'],
    ['0 x 5 g', 'amount-zero'],
    ['5 x 0 g', 'amount-zero'],
    ['-5 °C', 'amount-negative'],
    ['1.5 x 3 m', 'amount-not-whole'],
    ['450 x 300 x 2 mm', 'amount-unreadable.holding'],
    ['8–14 g', 'range-not-here'],
    ['box of 50', 'amount-unreadable.container'],
    ['100 sheets', 'unit-unknown'],
  ])('says what is wrong with %s', (text, code) => {
    expect(problemOf(readHolding(text))[0]).toBe(code);
  });
});

describe('a pack of sheets', () => {
  it.each([
    ['420 x 594 mm', { count: 1, each: mm('420', '594') }], // as a pack of cord it is 420 lengths
    ['5 x 450 mm x 300 mm', { count: 5, each: mm('450', '300') }],
    ['450 mm x 300 mm', { count: 1, each: mm('450', '300') }],
    ['12', { count: 1, each: { value: '12', unit: '' } }],
  ])('%s', (text, holding) => {
    expect(valueOf(readSheets(text))).toEqual(holding);
  });

  it('named by its paper size is told the sides', () => {
    expect(problemOf(readSheets('a3'))).toEqual(['amount-unreadable.paper', { size: '297 mm x 420 mm' }]);
  });
});
