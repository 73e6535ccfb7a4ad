import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { cutStrip } from '../../src/core/solve/cutting/strip.ts';
import { tooNear } from '../core/solve/cutting/overlaps.ts';

interface StripCase {
  readonly name: string;
  readonly W: number;
  readonly items: readonly (readonly [width: number, height: number])[];
  readonly optNoRotation?: number | null;
  readonly optRotation?: number | null;
  readonly bestRotation?: number | null;
  readonly lbRotation?: number;
}

/**
 * @source Beasley (1985), Oper Res 33:49–64; Hopper and Turton (2000), Eur J Oper Res 128:34–57, table 1; Burke, Kendall
 *         and Whitwell (2004), Oper Res 52:655–671. Strip optima: Martello, Monaci and Vigo (2003), INFORMS J Comput
 *         15:310–319. See `meta` of the file.
 */
const { cases } = JSON.parse(readFileSync(new URL('./data/packing2d.json', import.meta.url), 'utf8')) as {
  cases: readonly StripCase[];
};

const runs = cases.flatMap((one) =>
  [false, true].map((turn) => {
    const pieces = one.items.map(([width, height]) => ({ width, height, count: 1, turn }));
    const best = turn ? (one.optRotation ?? one.bestRotation) : (one.optNoRotation ?? undefined);
    const proven = turn ? (one.optRotation ?? one.lbRotation) : one.optNoRotation;
    return {
      name: `${one.name}${turn ? ', turned' : ''}`,
      pieces,
      best,
      proven,
      ...cutStrip({ width: one.W, pieces }),
    };
  }),
);

it.each(runs)(
  '$name: no overlap, never below what is proven',
  ({ pieces, placements, length, bound, proven }) => {
    expect(placements).toHaveLength(pieces.length);
    expect(tooNear(pieces, placements, 0)).toEqual([]);
    expect(length).toBeGreaterThanOrEqual(proven ?? bound);
  },
);

it('takes at most 2 % more than the best length known, on average', () => {
  const known = runs.filter(({ best }) => best);
  const excess = known.map(({ length, best }) => length / best! - 1);
  expect(known.length).toBeGreaterThan(20);
  expect(excess.reduce((sum, one) => sum + one, 0) / known.length).toBeLessThanOrEqual(0.02);
});
