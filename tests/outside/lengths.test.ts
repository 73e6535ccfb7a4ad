import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { cutLengths } from '../../src/core/solve/cutting/lengths.ts';

/**
 * @source Cutting stock: the example of 5,600 mm paper rolls, published optimum 73 rolls; Winston, Operations Research:
 *         Applications and Algorithms, section on column generation (Woodco). See `meta` of the file.
 */
const { meta } = JSON.parse(readFileSync(new URL('./data/pack-cover.json', import.meta.url), 'utf8')) as {
  readonly meta: {
    readonly cutting1d: readonly {
      readonly id: string;
      readonly stock: number;
      readonly demand: Readonly<Record<string, number>>;
      readonly optimum: number;
    }[];
  };
};

it.each(meta.cutting1d)('$id: as few rods as published, proven', ({ stock, demand, optimum }) => {
  const pieces = Object.entries(demand).map(([length, count]) => ({ length: Number(length), count }));
  const { rods, fewest } = cutLengths({ stock: [{ length: stock }], pieces });
  expect(rods).toHaveLength(optimum);
  expect(fewest).toBe(optimum);
  for (const rod of rods) {
    const used = rod.pieces.reduce((sum, { piece }) => sum + pieces[piece]!.length, 0);
    expect(used).toBeLessThanOrEqual(stock);
  }
  expect(
    pieces.map((_, at) => rods.flatMap((rod) => rod.pieces).filter(({ piece }) => piece === at).length),
  ).toEqual(pieces.map(({ count }) => count));
});
