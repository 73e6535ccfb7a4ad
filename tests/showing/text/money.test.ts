import { describe, expect, it } from 'vitest';
import { exact } from '../../../src/core/quantity/exact.ts';
import { showMoney, showSum } from '../../../src/showing/text/money.ts';

const pounds = { currency: 'GBP', minorDigits: { GBP: 2 } };

describe('money is rounded once, when it is shown', () => {
  it.each([
    ['113/40', 'half-up', '£2.83'], //  2.825
    ['103/30', 'half-up', '£3.43'], //  3.4333…
    ['103/30', 'up', '£3.44'],
    ['18', 'up', '£18.00'],
    ['1/1000', 'half-up', '£0.00'],
    ['1/1000', 'up', '£0.01'],
    ['12400', 'half-up', '£12,400.00'],
  ] as const)('%s pounds, %s', (amount, rule, text) => {
    expect(showMoney(exact(amount), pounds, rule)).toBe(text);
  });

  it('a currency without a sign stands with its code, and has its own minor digits', () => {
    expect(showMoney(exact('12'), { currency: 'CHF', minorDigits: { CHF: 2 } })).toBe('CHF\u00a012.00');
    expect(showMoney(exact('2499/2'), { currency: 'JPY', minorDigits: { JPY: 0 } })).toBe('¥1250');
  });

  it('a sum that a missing price may raise says "at least"', () => {
    expect(showSum(exact('5'), pounds, false)).toBe('at least £5.00');
    expect(showSum(exact('5'), pounds, true)).toBe('£5.00');
  });
});
