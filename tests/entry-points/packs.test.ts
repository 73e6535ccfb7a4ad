import { describe, expect, it } from 'vitest';
import { leastCostPacks } from '../../src/packs.ts';

describe('packs as another program asks for them', () => {
  it('takes whole numbers, decimals and fractions, and answers exactly', () => {
    // 3 x 50 = 150 for 26.97; one of 200 costs 29. 150 - 101 = 49 left.
    const packs = [
      { holds: 50, price: '8.99' },
      { holds: 200, price: '29' },
    ];
    expect(leastCostPacks({ need: 101, packs })).toEqual({ counts: [3, 0], cost: '2697/100', left: '49' });
    expect(leastCostPacks({ need: '7/2', packs: [{ holds: '3/2', price: 1 }] })).toEqual({
      counts: [3],
      cost: '3',
      left: '1',
    });
    expect(leastCostPacks({ need: 0, packs: [] })).toEqual({ counts: [], cost: '0', left: '0' });
  });

  it.each([
    ['a number that is not exact', { need: 0.1, packs: [] }, RangeError, 'need is 0.1: write a whole number'],
    ['words', { need: 'ten', packs: [] }, RangeError, 'need is "ten": write a whole number'],
    ['a need below zero', { need: -1, packs: [] }, RangeError, 'need must be zero or more, not -1.'],
    ['no packs for a need', { need: 1, packs: [] }, RangeError, 'packs must hold at least 1.'],
    [
      'an empty pack',
      { need: 1, packs: [{ holds: 0, price: 1 }] },
      RangeError,
      'packs[0].holds must be above zero.',
    ],
    [
      'a pack without a price',
      { need: 1, packs: [{ holds: 1 }] },
      TypeError,
      'packs[0].price must be a whole number, or a fraction or decimal as text.',
    ],
  ])('refuses %s, and says what is wrong', (_, problem, kind, message) => {
    const call = (): unknown => leastCostPacks(problem as never);
    expect(call).toThrow(kind);
    expect(call).toThrow(message);
  });
});
