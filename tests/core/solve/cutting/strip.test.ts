import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PieceKind } from '../../../../src/core/solve/cutting/pieces.ts';
import { cutStrip } from '../../../../src/core/solve/cutting/strip.ts';
import { laid, tooNear } from './overlaps.ts';

const piece = (width: number, height: number, count = 1, turn = false): PieceKind => ({
  width,
  height,
  count,
  turn,
});

describe('pieces cut from a strip', () => {
  it('takes no length for no pieces', () => {
    expect(cutStrip({ width: 100, pieces: [] })).toEqual({ length: 0, bound: 0, placements: [] });
  });

  it('lays pieces side by side as far as the width goes', () => {
    // 450 wide: three of 150 side by side, so seven pieces of 100 take three rows.
    expect(cutStrip({ width: 450, pieces: [piece(150, 100, 7)] })).toMatchObject({ length: 300 });
  });

  it('keeps a gap between pieces and none at the edges', () => {
    // 2 mm between: 150 + 2 + 150 + 2 + 146 = 450, and 100 + 2 + 100 along.
    expect(cutStrip({ width: 450, pieces: [piece(150, 100, 4)], gap: 2 })).toMatchObject({ length: 202 });
    expect(cutStrip({ width: 302, pieces: [piece(150, 100, 4)], gap: 2 })).toMatchObject({ length: 202 });
    expect(cutStrip({ width: 301, pieces: [piece(150, 100, 4)], gap: 2 })).toMatchObject({ length: 406 });
  });

  it('turns a piece only where the grain allows', () => {
    // 100 x 300 on a strip of 300: along it takes 300, turned 100.
    expect(cutStrip({ width: 300, pieces: [piece(100, 300, 1, true)] })).toMatchObject({ length: 100 });
    expect(cutStrip({ width: 300, pieces: [piece(100, 300, 1, false)] })).toMatchObject({ length: 300 });
  });

  const pieces = fc.array(
    fc.record({
      width: fc.integer({ min: 1, max: 40 }),
      height: fc.integer({ min: 1, max: 40 }),
      count: fc.integer({ min: 1, max: 4 }),
      turn: fc.boolean(),
    }),
    { minLength: 1, maxLength: 6 },
  );

  it('never lays two too near, one beyond the edge, or one too few; and never beats the bound', () => {
    fc.assert(
      fc.property(
        pieces,
        fc.integer({ min: 40, max: 90 }),
        fc.integer({ min: 0, max: 3 }),
        (kinds, width, gap) => {
          const { length, bound, placements } = cutStrip({ width, pieces: kinds, gap, budget: 600 });
          expect(tooNear(kinds, placements, gap)).toEqual([]);
          expect(kinds.map((_, kind) => placements.filter((p) => p.piece === kind).length)).toEqual(
            kinds.map(({ count }) => count),
          );
          const rectangles = placements.map((placement) => laid(kinds, placement));
          expect(Math.max(...rectangles.map((r) => r.x + r.width))).toBeLessThanOrEqual(width);
          expect(Math.max(...rectangles.map((r) => r.y + r.height))).toBe(length);
          expect(Math.min(...rectangles.map((r) => Math.min(r.x, r.y)))).toBeGreaterThanOrEqual(0);
          expect(length).toBeGreaterThanOrEqual(bound);
          expect(placements.every(({ piece: kind, turned }) => !turned || kinds[kind]!.turn)).toBe(true);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('lays the same pieces the same way again', () => {
    const problem = {
      width: 50,
      pieces: [piece(17, 23, 5, true), piece(11, 31, 4), piece(29, 8, 6, true)],
      gap: 1,
    };
    expect(JSON.stringify(cutStrip(problem))).toBe(JSON.stringify(cutStrip(problem)));
  });
});
