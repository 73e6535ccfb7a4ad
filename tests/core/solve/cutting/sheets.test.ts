import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PieceKind } from '../../../../src/core/solve/cutting/pieces.ts';
import {
  cutSheets,
  fitsNone,
  type SheetLayouts,
  type SheetProblem,
} from '../../../../src/core/solve/cutting/sheets.ts';
import { bestSheets } from './every-plan.ts';
import { laid, tooNear } from './overlaps.ts';

const piece = (width: number, height: number, count = 1, turn = false): PieceKind => ({
  width,
  height,
  count,
  turn,
});

describe('pieces cut from sheets', () => {
  it.each([
    // 4 across 600 and 4 along 400: 16 on a sheet, so 17 take two.
    ['begins a second sheet for one piece too many', [{ width: 600, height: 400 }], [piece(150, 100, 17)], 2],
    // 601 x 401 with 1 mm between: 150 + 1 + 150 + 1 + 150 + 1 + 147: three across only.
    ['leaves the gap between pieces', [{ width: 602, height: 402 }], [piece(150, 100, 10)], 2, 1],
    // 603 = 4 x 150 + 3, 403 = 4 x 100 + 3.
    ['leaves no gap at the edges', [{ width: 603, height: 403 }], [piece(150, 100, 16)], 1, 1],
    // 300 x 90 stands on a sheet 100 wide only when turned.
    ['turns a piece', [{ width: 100, height: 300 }], [piece(300, 90, 1, true)], 1],
    ['takes no sheet for no pieces', [{ width: 100, height: 300 }], [piece(10, 10, 0)], 0],
  ])('%s', (_, sheets, pieces, count, gap = 0) => {
    expect(cutSheets({ sheets, pieces, gap }).sheets).toHaveLength(count);
  });

  it('takes offcuts that cost nothing before a sheet is bought', () => {
    // Two of 100 x 100 go on the offcut, two on the small sheet for 3; the large one for 5 is not bought.
    const { sheets, value, bound } = cutSheets({
      sheets: [
        { width: 200, height: 200, price: 5 },
        { width: 200, height: 100, price: 3 },
        { width: 210, height: 110, price: 0, count: 1 },
      ],
      pieces: [piece(100, 100, 4)],
    });
    expect([value, bound]).toEqual([3, 3]);
    expect(sheets.map(({ sheet }) => sheet).sort()).toEqual([1, 2]);
  });

  it('leaves an offcut at hand alone where it saves no money', () => {
    // The sheet that must be bought holds all: fewest sheets.
    const { sheets } = cutSheets({
      sheets: [
        { width: 100, height: 100, price: 0, count: 1 },
        { width: 300, height: 300, price: 9 },
      ],
      pieces: [piece(200, 200), piece(100, 100)],
    });
    expect(sheets.map(({ sheet }) => sheet)).toEqual([1]);
  });

  it('keeps the largest offcut whole', () => {
    // 5 of 50 x 50 on sheets of 100 x 100: four fill one, and the last uses 50 of the other.
    const { sheets } = cutSheets({ sheets: [{ width: 100, height: 100 }], pieces: [piece(50, 50, 5)] });
    expect(sheets.map(({ used }) => used)).toEqual([100, 50]);
  });

  it('says how many find no room on the sheets that there are', () => {
    const { left } = cutSheets({
      sheets: [{ width: 100, height: 100, count: 1 }],
      pieces: [piece(50, 50, 6)],
    });
    expect(left).toEqual([2]);
  });

  it('says which pieces fit no sheet, and does not begin with them', () => {
    const sheets = [{ width: 60, height: 40 }];
    const pieces = [piece(40, 60, 1, true), piece(40, 60, 1, false), piece(61, 1, 1, true), piece(99, 99, 0)];
    expect(fitsNone(sheets, pieces)).toEqual([1, 2]);
    expect(() => cutSheets({ sheets, pieces })).toThrow('larger than every sheet');
  });

  it('lays hundreds of pieces within the work allowed, the same way again', () => {
    const pieces = Array.from({ length: 60 }, (_, at) =>
      piece(40 + ((at * 37) % 160), 30 + ((at * 53) % 130), 5, at % 2 === 0),
    );
    const problem = { sheets: [{ width: 600, height: 400 }], pieces, gap: 2 };
    const once = cutSheets(problem);
    expect(JSON.stringify(cutSheets(problem))).toBe(JSON.stringify(once));
    expect(once.sheets.length).toBeLessThanOrEqual(Math.ceil(once.fewest * 1.05));
    refuteNothing(problem, once);
  });
});

const anyPieces = (side: number, kinds: number) =>
  fc.array(
    fc.record({
      width: fc.integer({ min: 1, max: side }),
      height: fc.integer({ min: 1, max: side }),
      count: fc.integer({ min: 1, max: 2 }),
      turn: fc.boolean(),
    }),
    { minLength: 1, maxLength: kinds },
  );
const anySheets = (least: number, most: number) =>
  fc.boolean().chain((priced) =>
    fc.array(
      fc.record(
        {
          width: fc.integer({ min: least, max: most }),
          height: fc.integer({ min: least, max: most }),
          price: priced ? fc.nat(8) : fc.constant(undefined as never),
          count: fc.integer({ min: 1, max: 2 }),
        },
        { requiredKeys: priced ? ['width', 'height', 'price'] : ['width', 'height'] },
      ),
      { minLength: 1, maxLength: 3 },
    ),
  );

describe('any pieces on any sheets', () => {
  it('are cut as well as the best of all plans: value, number of sheets, offcut', () => {
    fc.assert(
      fc.property(anySheets(2, 6), anyPieces(4, 3), fc.nat(1), (kinds, pieces, gap) => {
        const sheets = kinds.map(withoutUndefined);
        fc.pre(fitsNone(sheets, pieces).length === 0);
        const best = bestSheets({ sheets, pieces, gap });
        const cut = cutSheets({ sheets, pieces, gap });
        expect(cut.left.some((count) => count > 0)).toBe(best === undefined);
        if (!best) return;
        const offcuts = cut.sheets.map(
          ({ sheet, used }) => sheets[sheet]!.width * (sheets[sheet]!.height - used),
        );
        expect([cut.value, cut.sheets.length, Math.max(...offcuts)]).toEqual(best);
        expect(cut.bound).toBeLessThanOrEqual(best[0]);
        expect(cut.fewest).toBeLessThanOrEqual(best[1]);
      }),
      { numRuns: 1000 },
    );
  }, 120_000);

  it('never overlap, keep the gap, the grain and the edges, and are all there', () => {
    fc.assert(
      fc.property(anySheets(30, 90), anyPieces(40, 9), fc.nat(3), (kinds, pieces, gap) => {
        const sheets = kinds.map(withoutUndefined);
        fc.pre(fitsNone(sheets, pieces).length === 0);
        const problem = { sheets, pieces, gap, budget: 2000 };
        refuteNothing(problem, cutSheets(problem));
      }),
      { numRuns: 200 },
    );
  }, 120_000);
});

function withoutUndefined<T extends object>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}

function refuteNothing({ sheets: kinds, pieces, gap = 0 }: SheetProblem, cut: SheetLayouts): void {
  const { sheets, left, value, bound, fewest } = cut;
  for (const { sheet, used, placements } of sheets) {
    expect(tooNear(pieces, placements, gap)).toEqual([]);
    const rectangles = placements.map((placement) => laid(pieces, placement));
    expect(Math.min(...rectangles.map(({ x, y }) => Math.min(x, y)))).toBeGreaterThanOrEqual(0);
    expect(Math.max(...rectangles.map(({ x, width }) => x + width))).toBeLessThanOrEqual(kinds[sheet]!.width);
    expect(Math.max(...rectangles.map(({ y, height }) => y + height))).toBe(used);
    expect(used).toBeLessThanOrEqual(kinds[sheet]!.height);
  }
  const placements = sheets.flatMap((sheet) => sheet.placements);
  expect(placements.every(({ piece: kind, turned }) => !turned || pieces[kind]!.turn)).toBe(true);
  expect(pieces.map((_, kind) => placements.filter((p) => p.piece === kind).length + left[kind]!)).toEqual(
    pieces.map(({ count }) => count),
  );
  kinds.forEach(({ count = Infinity }, kind) =>
    expect(sheets.filter(({ sheet }) => sheet === kind).length).toBeLessThanOrEqual(count),
  );
  const priced = kinds.every(({ price }) => price !== undefined);
  const worth = ({ width, height, price }: (typeof kinds)[number]): number =>
    priced ? price! : width * height;
  expect(value).toBe(sheets.reduce((sum, { sheet }) => sum + worth(kinds[sheet]!), 0));
  expect(value).toBeGreaterThanOrEqual(bound);
  expect(sheets.length).toBeGreaterThanOrEqual(fewest);
}
