import fc from 'fast-check';
import { expect, it } from 'vitest';
import { distances } from '../../../../../src/core/solve/schedule/exact/distances.ts';

type Arc = readonly [i: number, j: number, least: number];
const size = 6;
const arcs = fc.array(fc.tuple(fc.nat(size - 1), fc.nat(size - 1), fc.integer({ min: -9, max: 5 })), {
  maxLength: 15,
});

/** All longest paths at once, Floyd and Warshall's way; nothing where some moment would come after itself. */
function longest(arcs: readonly Arc[]): number[] | undefined {
  const at = Array.from({ length: size * size }, (_, cell) => (cell % (size + 1) === 0 ? 0 : -Infinity));
  for (const [i, j, least] of arcs) at[i * size + j] = Math.max(at[i * size + j]!, least);
  for (let k = 0; k < size; k++)
    for (let i = 0; i < size; i++)
      for (let j = 0; j < size; j++)
        at[i * size + j] = Math.max(at[i * size + j]!, at[i * size + k]! + at[k * size + j]!);
  return at.some((least, cell) => cell % (size + 1) === 0 && least > 0) ? undefined : at;
}

it('each arc that closes no circle lengthens the ways it serves, and no others', () => {
  fc.assert(
    fc.property(arcs, (all) => {
      const table = distances(size);
      const kept: Arc[] = [];
      for (const arc of all) {
        const expected = longest([...kept, arc]);
        expect(table.settle(...arc)).toBe(expected !== undefined);
        if (expected) kept.push(arc);
        expect([...table.at]).toEqual(longest(kept));
      }
    }),
  );
});

it('what is taken back leaves no trace', () => {
  fc.assert(
    fc.property(arcs, arcs, (first, second) => {
      const table = distances(size);
      for (const arc of first) table.settle(...arc);
      const [before, mark] = [[...table.at], table.mark()];
      for (const arc of second) table.settle(...arc);
      table.back(mark);
      expect([...table.at]).toEqual(before);
      expect(table.mark()).toBe(mark);
    }),
  );
});
