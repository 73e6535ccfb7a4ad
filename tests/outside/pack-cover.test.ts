import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/core/quantity/exact.ts';
import { leastCostPacks } from '../../src/core/solve/packs/least-cost-packs.ts';

interface PackCover {
  readonly meta: {
    readonly frobenius: { readonly packs: readonly number[]; readonly largestNotExactlyReachable: number };
  };
  readonly cases: readonly {
    readonly id: string;
    readonly demand: number;
    readonly packs: readonly { readonly size: number; readonly priceMinor: number }[];
    readonly optimum: {
      readonly costMinor: number;
      readonly surplus: number;
      readonly packs: number;
      readonly counts: readonly number[];
    };
  }[];
}
const { meta, cases } = JSON.parse(
  readFileSync(new URL('data/pack-cover.json', import.meta.url), 'utf8'),
) as PackCover;

/** Source: optima found by dynamic programming and confirmed with an integer-programming solver. */
describe('whole packs against recomputed optima', () => {
  it.each(cases)('$id', ({ demand, packs, optimum }) => {
    const { counts, cost, left } = leastCostPacks(
      exact(demand),
      packs.map(({ size, priceMinor }) => ({ holds: exact(size), price: exact(priceMinor) })),
    );
    expect(counts).toEqual(optimum.counts);
    expect(cost.equals(exact(optimum.costMinor))).toBe(true);
    expect(left.equals(exact(optimum.surplus))).toBe(true);
    expect(counts.reduce((a, b) => a + b)).toBe(optimum.packs);
  });
});

/** Source: the largest number that packs of 6, 9 and 20 do not make up is 43 (Frobenius; "McNugget numbers"). */
describe('packs of 6, 9 and 20', () => {
  const { packs, largestNotExactlyReachable: largest } = meta.frobenius;
  const leftOf = (need: number) =>
    leastCostPacks(
      exact(need),
      packs.map((size) => ({ holds: exact(size), price: exact(size) })),
    ).left;

  it(`cannot make up ${largest} exactly`, () => {
    expect(leftOf(largest).equals(exact(1))).toBe(true);
  });
  it('make up every larger number exactly', () => {
    for (let need = largest + 1; need <= largest + 60; need++)
      expect(leftOf(need).equals(exact(0))).toBe(true);
  });
});
