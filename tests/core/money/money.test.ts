import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allocate, inCurrency, printMoney, roundMoney } from '../../../src/core/money/money.ts';
import { readMoney, readMoneyRange, readWage } from '../../../src/core/money/read-money.ts';
import { exact, rational } from '../../../src/core/quantity/exact.ts';
import { problemOf, valueOf } from '../quantity/readings.ts';

const gbp = (amount: string) => ({ amount, currency: 'GBP' });

describe('a sum of money', () => {
  it.each([
    ['6.40 GBP', gbp('32/5')],
    ['GBP 6.40', gbp('32/5')],
    ['6GBP', gbp('6')],
    ['0 GBP', gbp('0')],
    ['1000 JPY', { amount: '1000', currency: 'JPY' }],
  ])('reads %s', (text, money) => {
    expect(valueOf(readMoney(text))).toEqual(money);
  });

  it.each([
    ['£6.40', 'currency-missing.symbol', { symbol: '£', number: '6.40' }],
    ['6.40', 'currency-missing', { number: '6.40' }],
    ['6.40 gbp', 'currency-unknown.near', { currency: 'gbp', number: '6.40', nearest: 'GBP' }],
    ['6.40 pounds', 'currency-unknown', { currency: 'pounds', number: '6.40' }],
    ['6,40', 'currency-missing.comma', { point: '6.40', thousands: '640' }],
    ['€6,40', 'currency-missing.euro', { number: '6.40' }],
    ['6,40 GBP', 'decimal-comma', { point: '6.40 GBP', thousands: '640 GBP' }],
    ['1/2 GBP', 'money-unreadable', {}],
    ['-3 GBP', 'amount-negative', {}],
    ['free', 'amount-unreadable', {}],
    ['6.40 GBP each', 'money-unreadable', {}],
  ])('says what is wrong with %s', (text, code, facts) => {
    expect(problemOf(readMoney(text))).toEqual([code, facts]);
  });

  it('reads a wage by the hour alone', () => {
    for (const text of ['18 GBP/h', '18 GBP / hour', '18 GBP per hour', '18 GBP an hour']) {
      expect(valueOf(readWage(text))).toEqual(gbp('18'));
    }
    expect(problemOf(readWage('18 GBP'))[0]).toBe('unit-wrong.per-hour');
    expect(problemOf(readWage('18/h'))[0]).toBe('currency-missing');
  });

  it('reads a range, and one sum as both its ends', () => {
    const range = { least: gbp('32/5'), most: gbp('71/10') };
    for (const text of ['6.40–7.10 GBP', '6.40 GBP - 7.10 GBP', '6.40 to 7.10 GBP', 'GBP 6.40–GBP 7.10']) {
      expect(valueOf(readMoneyRange(text))).toEqual(range);
    }
    expect(valueOf(readMoneyRange('6 GBP'))).toEqual({ least: gbp('6'), most: gbp('6') });
    expect(problemOf(readMoneyRange('7–6 GBP'))).toEqual([
      'range-reversed',
      { least: '7 GBP', most: '6 GBP' },
    ]);
    expect(problemOf(readMoneyRange('6 GBP – 7 USD'))[0]).toBe('currency-mixed');
  });

  it('never throws at a text', () => {
    const pieces = ['6', '.', ',', '40', ' ', 'GBP', '£', '–', '-', ' to ', '/h', 'gbp', '/'];
    const likely = fc.array(fc.constantFrom(...pieces), { maxLength: 8 }).map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: 'binary' }), likely), (text) => {
        for (const reading of [readMoney(text), readMoneyRange(text), readWage(text)]) {
          if (!reading.ok) expect(reading.problem.facts['text']).toBe(text.trim());
        }
      }),
      { numRuns: 3000 },
    );
  });
});

it('takes another currency at its rate, and none without one', () => {
  const program = { currency: 'GBP', exchange: { USD: { rate: '79/100', on: '2026-10-01' } } };
  expect(rational(inCurrency(gbp('5'), program)!)).toBe('5');
  // 10 USD at 0.79 = 7.90 GBP
  expect(rational(inCurrency({ amount: '10', currency: 'USD' }, program)!)).toBe('79/10');
  expect(inCurrency({ amount: '10', currency: 'EUR' }, program)).toBeUndefined();
});

describe('printing', () => {
  it.each([
    ['18', 2, '18.00'],
    ['113/40', 2, '2.825'],
    ['103/30', 2, '103/30'],
    ['18', 0, '18'],
    ['7/2', 0, '3.5'],
    ['3/2', 3, '1.500'],
    ['-1/2', 2, '-0.50'],
  ])('%s with %d minor digits is %s for machines', (value, digits, text) => {
    expect(printMoney(exact(value), digits)).toBe(text);
  });

  it.each([
    ['103/30', 2, '3.43', '3.43', '3.44'],
    ['1/200', 2, '0.01', '0.00', '0.01'],
    ['-1/200', 2, '-0.01', '0.00', '0.00'],
    ['1/2', 0, '1', '0', '1'],
    ['3/2', 0, '2', '2', '2'],
  ])('%s is rounded once: half up, half even, up', (value, digits, halfUp, halfEven, up) => {
    const x = exact(value);
    expect([
      roundMoney(x, digits, 'half-up'),
      roundMoney(x, digits, 'half-even'),
      roundMoney(x, digits, 'up'),
    ]).toEqual([halfUp, halfEven, up]);
  });

  it('reads back what it printed', () => {
    fc.assert(
      fc.property(fc.nat(1_000_000), fc.integer({ min: 0, max: 4 }), (minor, digits) => {
        const x = exact(minor).div(exact(10 ** digits));
        expect(valueOf(readMoney(`${printMoney(x, 2)} GBP`))).toEqual(gbp(rational(x)));
      }),
    );
  });
});

it('shares a sum so that the shares add up, whichever its sign', () => {
  const weights = fc.array(
    fc.nat(100).map((weight) => exact(weight)),
    { minLength: 1, maxLength: 9 },
  );
  fc.assert(
    fc.property(fc.integer({ min: -100_000, max: 100_000 }), weights, (total, shares) => {
      expect(allocate(total, shares).reduce((sum, share) => sum + share, 0)).toBe(total);
    }),
  );
});
