import { describe, expect, it } from 'vitest';
import { allocate, roundMoney } from '../../src/core/money/money.ts';
import { exact } from '../../src/core/quantity/exact.ts';
import reference from './data/money-rounding.json' with { type: 'json' };

// Both roundings as worked out with Python's decimal (ROUND_HALF_EVEN, ROUND_HALF_UP), Python 3 library reference.
describe('sums are rounded as decimal arithmetic has it', () => {
  it.each(reference.cases)('$value to $digits digits', ({ value, digits, halfEven, halfUpAwayFromZero }) => {
    expect(roundMoney(exact(value), digits, 'half-even')).toBe(halfEven);
    expect(roundMoney(exact(value), digits, 'half-up')).toBe(halfUpAwayFromZero);
  });
});

// Largest remainder, ties to the first; worked by hand in the case file.
it.each(reference.meta.allocation)(
  '$totalMinor shared by $weights is $shares',
  ({ totalMinor, weights, shares }) => {
    expect(
      allocate(
        totalMinor,
        weights.map((weight) => exact(weight)),
      ),
    ).toEqual(shares);
  },
);
