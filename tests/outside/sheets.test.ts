import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cutSheets } from '../../src/core/solve/cutting/sheets.ts';
import { tooNear } from '../core/solve/cutting/overlaps.ts';

interface PerfectCase {
  readonly name: string;
  readonly kind: string;
  readonly W: number;
  readonly items: readonly (readonly [width: number, height: number])[];
  readonly optRotation: number;
}

/**
 * Rectangles that fill a rectangle without any waste, so that a plan at the area bound is known.
 *
 * @source Hopper and Turton (2000), Eur J Oper Res 128:34–57, table 1; Burke, Kendall and Whitwell (2004), Oper Res
 *         52:655–671. See `meta` of the file.
 */
const { cases } = JSON.parse(readFileSync(new URL('./data/packing2d.json', import.meta.url), 'utf8')) as {
  cases: readonly PerfectCase[];
};
const perfect = cases.filter(({ kind }) => kind === 'perfect-strip');

const cut = ({ W, items, optRotation }: PerfectCase, copies: number, spare: number) => {
  const pieces = items.map(([width, height]) => ({ width, height, count: copies, turn: true }));
  const sheet = { width: W, height: Math.ceil(optRotation * (1 + spare)) };
  return { pieces, sheet, ...cutSheets({ sheets: [sheet], pieces }) };
};

describe('sheets as few as the area bound', () => {
  const rows = perfect.flatMap((one) => [1, 2, 3].map((copies) => ({ one, copies, name: one.name })));
  it.each(rows)('$copies of $name on sheets 5 % longer than the known plan', ({ one, copies }) => {
    const { pieces, sheet, sheets, fewest } = cut(one, copies, 0.05);
    const area = pieces.reduce((sum, { width, height, count }) => sum + width * height * count, 0);
    expect(sheets).toHaveLength(Math.ceil(area / (sheet.width * sheet.height)));
    expect(fewest).toBe(sheets.length);
    for (const { placements, used } of sheets) {
      expect(tooNear(pieces, placements, 0)).toEqual([]);
      expect(used).toBeLessThanOrEqual(sheet.height);
    }
  });

  it.each(perfect.filter(({ name }) => ['C1_1', 'C1_3', 'C2_1', 'BKW1', 'BKW2'].includes(name)))(
    '$name on one sheet, without any waste',
    (one) => {
      expect(cut(one, 1, 0).sheets).toHaveLength(1);
    },
  );
});
