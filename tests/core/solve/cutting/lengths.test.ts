import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutLengths, longerThanAll } from '../../../../src/core/solve/cutting/lengths.ts';
import { bestLengths } from './every-plan.ts';

describe('lengths cut from rods', () => {
  it('loses what the saw takes between two pieces, and nothing at the ends', () => {
    // 3 x 332 + 2 x 2 = 1000.
    const pieces = [{ length: 332, count: 3 }];
    expect(cutLengths({ stock: [{ length: 1000 }], pieces, gap: 2 }).rods).toEqual([
      {
        stock: 0,
        used: 1000,
        pieces: [
          { piece: 0, at: 0 },
          { piece: 0, at: 334 },
          { piece: 0, at: 668 },
        ],
      },
    ]);
    expect(cutLengths({ stock: [{ length: 999 }], pieces, gap: 2 }).rods).toHaveLength(2);
  });

  it('buys the lengths that cost least together', () => {
    // 5 x 900: a rod of 2000 for 7 holds two, one of 3000 for 10 holds three: 17. Three of 2000 cost 21, two of 3000 20.
    const { rods, value, bound } = cutLengths({
      stock: [
        { length: 2000, price: 7 },
        { length: 3000, price: 10 },
      ],
      pieces: [{ length: 900, count: 5 }],
    });
    expect([value, bound]).toEqual([17, 17]);
    expect(rods.map(({ stock }) => stock).sort()).toEqual([0, 1]);
  });

  it('uses an offcut at hand where that saves a rod', () => {
    const { rods, value } = cutLengths({
      stock: [
        { length: 1000, price: 4 },
        { length: 350, price: 0, count: 1 },
      ],
      pieces: [{ length: 330, count: 4 }],
    });
    expect([value, rods.length]).toEqual([4, 2]);
  });

  it('says which pieces are longer than every rod', () => {
    const stock = [{ length: 500 }, { length: 700 }];
    const pieces = [
      { length: 700, count: 1 },
      { length: 701, count: 1 },
    ];
    expect(longerThanAll(stock, pieces)).toEqual([1]);
    expect(() => cutLengths({ stock, pieces })).toThrow('longer than every rod');
  });

  const anyStock = fc.boolean().chain((priced) =>
    fc.array(
      fc.record(
        {
          length: fc.integer({ min: 4, max: 20 }),
          price: fc.nat(8),
          count: fc.integer({ min: 1, max: 2 }),
        },
        { requiredKeys: priced ? ['length', 'price'] : ['length'] },
      ),
      { minLength: 1, maxLength: 3 },
    ),
  );
  const anyPieces = fc.array(
    fc.record({ length: fc.integer({ min: 1, max: 10 }), count: fc.integer({ min: 1, max: 2 }) }),
    { minLength: 1, maxLength: 3 },
  );

  // 5 + 1 from the rod of 6 at 1, 2 + 2 from the free rod of 4: value 1, two rods, nothing over
  const dearFirst = [
    { length: 6, price: 1 },
    { length: 6, price: 2 },
    { length: 4, price: 0 },
  ];
  const fiveTwoTwoOne = [
    { length: 2, count: 2 },
    { length: 5, count: 1 },
    { length: 1, count: 1 },
  ];

  it('cuts any lengths as well as the best of all plans: value, number of rods, offcut', () => {
    fc.assert(
      fc.property(anyStock, anyPieces, fc.nat(1), (stock, pieces, gap) => {
        fc.pre(longerThanAll(stock, pieces).length === 0);
        const best = bestLengths({ stock, pieces, gap });
        const cut = cutLengths({ stock, pieces, gap });
        expect(cut.left.some((count) => count > 0)).toBe(best === undefined);
        for (const { stock: kind, used, pieces: cuts } of cut.rods) {
          const ends = cuts.map(({ piece, at }) => at + pieces[piece]!.length);
          expect(cuts.every(({ at }, next) => next === 0 || at === ends[next - 1]! + gap)).toBe(true);
          expect(ends.at(-1)).toBe(used);
          expect(used).toBeLessThanOrEqual(stock[kind]!.length);
        }
        if (!best) return;
        const offcuts = cut.rods.map(({ stock: kind, used }) => stock[kind]!.length - used);
        expect([cut.value, cut.rods.length, Math.max(...offcuts)]).toEqual(best);
        expect(cut.bound).toBeLessThanOrEqual(best[0]);
        expect(
          pieces.map((_, at) => cut.rods.flatMap((r) => r.pieces).filter((p) => p.piece === at).length),
        ).toEqual(pieces.map(({ count }) => count));
      }),
      { numRuns: 1500, examples: [[dearFirst, fiveTwoTwoOne, 0]] },
    );
  }, 120_000);
});
