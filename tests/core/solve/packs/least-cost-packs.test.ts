import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exact, rational } from '../../../../src/core/quantity/exact.ts';
import { leastCostPacks, type Pack } from '../../../../src/core/solve/packs/least-cost-packs.ts';

const pack = (holds: string, price: string): Pack => ({ holds: exact(holds), price: exact(price) });
const buy = (needed: string, ...packs: readonly Pack[]) => {
  const { counts, cost, left } = leastCostPacks(exact(needed), packs);
  return { counts, cost: rational(cost), left: rational(left) };
};

describe('least-cost packs', () => {
  it.each([
    // 2 x 50 = 100 is a gram short of 101, so 3; 150 - 101 = 49 left; 3 x 8.99 = 26.97
    [
      'buys a whole extra pack when the last one is a gram short',
      '101',
      [['50', '8.99']],
      [3],
      '2697/100',
      '49',
    ],
    // exactly 2 packs: nothing left
    ['buys no extra pack when the packs fit exactly', '100', [['50', '8.99']], [2], '899/50', '0'],
    ['buys nothing for no need', '0', [['50', '8.99']], [0], '0', '0'],
    // 120 g: 3 x 50 = 15; 1 x 200 = 14
    [
      'takes one large pack where it is cheaper than many small',
      '120',
      [
        ['50', '5'],
        ['200', '14'],
      ],
      [0, 1],
      '14',
      '80',
    ],
    // 1/3 + 1/3 < 7/9 <= 1/3 + 4/9: fractions stay exact
    [
      'counts thirds of a sheet exactly',
      '7/9',
      [
        ['1/3', '1'],
        ['4/9', '1.10'],
      ],
      [1, 1],
      '21/10',
      '0',
    ],
    // 10 for 6 each way (2 x 3, 3 x 2): least left over is 0 with 2 x 5 = 10, not 12
    [
      'among equal costs leaves the least over',
      '10',
      [
        ['6', '3'],
        ['5', '3'],
      ],
      [0, 2],
      '6',
      '0',
    ],
    // 12 = 2 x 6 = 3 x 4, both 6.00 and nothing left: fewer packs
    [
      'among equal costs and left-overs takes the fewest packs',
      '12',
      [
        ['4', '2'],
        ['6', '3'],
      ],
      [0, 2],
      '6',
      '0',
    ],
    // 8 + 8 and 6 + 10 cost 16 and come to 16: the pack that the author lists first
    [
      'among equals takes most of the pack that is listed first',
      '16',
      [
        ['8', '8'],
        ['6', '6'],
        ['10', '10'],
      ],
      [2, 0, 0],
      '16',
      '0',
    ],
    [
      'of the same pack from two shops takes the first',
      '5',
      [
        ['2', '3'],
        ['2', '3'],
      ],
      [3, 0],
      '9',
      '1',
    ],
    // free packs still leave little over: 2 x 3 for a need of 5
    [
      'of free packs leaves the least over',
      '5',
      [
        ['3', '0'],
        ['10', '0'],
      ],
      [2, 0],
      '0',
      '1',
    ],
    // 2 lb = 907.18474 g for 9.08; 1 lb + 500 g = 953.59 g for 9.53
    [
      'mixes pounds and grams exactly',
      '900',
      [
        ['45359237/100000', '4.54'],
        ['500', '4.99'],
      ],
      [2, 0],
      '227/25',
      '359237/50000',
    ],
  ] as const)('%s', (_, needed, packs, counts, cost, left) => {
    const answer = buy(needed, ...packs.map(([holds, price]) => pack(holds, price)));
    expect(answer).toEqual({ counts: [...counts], cost, left: rational(exact(left)) });
  });

  it('refuses a pack that holds nothing, a price or need below zero, and a need without packs', () => {
    expect(() => buy('5', pack('0', '1'))).toThrow('holds nothing');
    expect(() => buy('5', pack('2', '-1'))).toThrow('below zero');
    expect(() => buy('-5', pack('2', '1'))).toThrow('below zero');
    expect(() => buy('5')).toThrow('no packs');
    expect(buy('0')).toEqual({ counts: [], cost: '0', left: '0' });
  });

  it('agrees with trying every choice of packs, on cost, left-over, packs and order', () => {
    const anyPack = fc.record({
      holds: fc.integer({ min: 1, max: 14 }),
      price: fc.integer({ min: 0, max: 9 }),
    });
    fc.assert(
      fc.property(fc.nat(50), fc.array(anyPack, { minLength: 1, maxLength: 4 }), (need, packs) => {
        const asked = packs.map(({ holds, price }) => pack(String(holds), String(price)));
        expect(leastCostPacks(exact(need), asked).counts).toEqual(everyChoice(need, packs));
      }),
      { numRuns: 3000 },
    );
  }, 120_000);

  it('covers the need, and one pack fewer of any kind would not, unless it is free', () => {
    const anyPack = fc.record({
      holds: fc.integer({ min: 1, max: 500 }),
      price: fc.integer({ min: 1, max: 900 }),
    });
    fc.assert(
      fc.property(fc.nat(200_000), fc.array(anyPack, { minLength: 1, maxLength: 5 }), (need, packs) => {
        const { counts, left } = leastCostPacks(
          exact(need),
          packs.map((p) => pack(`${p.holds}/7`, `${p.price}/100`)),
        );
        expect(left.gte(exact(0))).toBe(true);
        counts.forEach((count, index) => {
          if (count > 0) expect(left.lt(exact(`${packs[index]!.holds}/7`))).toBe(true);
        });
      }),
    );
  });

  it('costs the same in grams as in kilograms', () => {
    fc.assert(
      fc.property(
        fc.nat(5000),
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: 91, max: 700 }),
        (need, small, large) => {
          const inUnits = (unit: number) => [
            pack(`${small}/${unit}`, '1.20'),
            pack(`${large}/${unit}`, '6.95'),
          ];
          const inGrams = leastCostPacks(exact(need), inUnits(1));
          const inKilograms = leastCostPacks(exact(`${need}/1000`), inUnits(1000));
          expect(inKilograms.counts).toEqual(inGrams.counts);
        },
      ),
    );
  });
});

describe('large needs', () => {
  const shelf = [
    { holds: 28, price: 150 },
    { holds: 113, price: 420 },
    { holds: 454, price: 1290 },
    { holds: 2270, price: 4890 },
  ];
  it.each([
    ['of a shelf of four sizes', shelf],
    ['where every pack has the same price for a gram', shelf.map(({ holds }) => ({ holds, price: holds }))],
    ['where prices hardly differ', shelf.map(({ holds }) => ({ holds, price: holds * 10 + 1 }))],
  ])('10,000 models at 120 g %s: the least cost of a table of every gram', (_, packs) => {
    const begun = performance.now();
    const { counts } = leastCostPacks(
      exact(1_200_000),
      packs.map((p) => pack(String(p.holds), String(p.price))),
    );
    const milliseconds = performance.now() - begun;
    const sum = (of: 'holds' | 'price') =>
      counts.reduce((all, count, index) => all + count * packs[index]![of], 0);
    expect([sum('price'), sum('holds'), counts.reduce((a, b) => a + b)]).toEqual(everyGram(1_200_000, packs));
    expect(milliseconds).toBeLessThan(1000);
  });

  it('pounds, ounces and grams together, to the last hundred-thousandth', () => {
    const packs = [
      pack('28.349523125', '1.45'),
      pack('453.59237', '9.99'),
      pack('500', '10.99'),
      pack('2267.96185', '46.50'),
    ];
    const begun = performance.now();
    const { counts, left } = leastCostPacks(exact(1_200_000), packs);
    expect(performance.now() - begun).toBeLessThan(1000);
    expect(left.gte(exact(0))).toBe(true);
    expect(counts[3]).toBeGreaterThan(500);
  });
});

/** Slow and simple: every count of every pack up to the need, best by cost, left-over, packs, then order. */
function everyChoice(need: number, packs: readonly { holds: number; price: number }[]): number[] {
  let best: { key: number[]; counts: number[] } | undefined;
  const walk = (counts: number[], held: number, cost: number): void => {
    const index = counts.length;
    if (index === packs.length) {
      if (held < need) return;
      const key = [cost, held, counts.reduce((a, b) => a + b, 0), ...counts.map((count) => -count)];
      if (!best || isBefore(key, best.key)) best = { key, counts };
      return;
    }
    const { holds, price } = packs[index]!;
    for (let count = 0; held + (count - 1) * holds < need || count === 0; count++) {
      walk([...counts, count], held + count * holds, cost + count * price);
    }
  };
  walk([], 0, 0);
  return best!.counts;
}

function isBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 && a[at]! < b[at]!;
}

/** Least [cost, amount, packs] for every gram up to the need, one after the other. */
function everyGram(need: number, packs: readonly { holds: number; price: number }[]): number[] {
  const cost = new Float64Array(need + 1);
  const held = new Float64Array(need + 1);
  const used = new Float64Array(need + 1);
  for (let gram = 1; gram <= need; gram++) {
    cost[gram] = Infinity;
    for (const { holds, price } of packs) {
      const before = Math.max(0, gram - holds);
      const key = [cost[before]! + price, held[before]! + holds, used[before]! + 1];
      if (!isBefore(key, [cost[gram]!, held[gram]!, used[gram]!])) continue;
      [cost[gram], held[gram], used[gram]] = key as [number, number, number];
    }
  }
  return [cost[need]!, held[need]!, used[need]!];
}
