import { describe, expect, it } from 'vitest';
import { cutLengths, cutSheets, cutStrip } from '../../src/cutting.ts';

describe('cutting as another program calls it', () => {
  it('cuts pieces from the cheapest sheets, an offcut at hand first', () => {
    // 18 of 150 x 100: 12 on 598 x 398 of a sheet (3 x 150 + 2 x 2 = 454 across, 3 x 102 along; with turns 12 at most by
    // area 240000 / 15504 = 15), so one sheet never holds 18 and two do: 900.
    const { sheets, value, bound, left } = cutSheets({
      sheets: [
        { width: 600, height: 400, price: 450 },
        { width: 300, height: 200, price: 0, count: 1 },
      ],
      pieces: [{ width: 150, height: 100, count: 18, turn: true }],
      gap: 2,
    });
    expect([value, bound]).toEqual([900, 900]);
    expect(sheets.flatMap(({ placements }) => placements)).toHaveLength(18);
    expect(left).toEqual([0]);
  });

  it('cuts lengths from rods, with the saw between them', () => {
    // 3 x 650 + 2 x 3 = 1956 of 2000: two rods for six; 4 x 300 + 3 x 3 = 1209: a third.
    const { rods, fewest } = cutLengths({
      stock: [{ length: 2000 }],
      pieces: [
        { length: 650, count: 6 },
        { length: 300, count: 4 },
      ],
      gap: 3,
    });
    expect([rods.length, fewest]).toEqual([3, 3]);
    expect(rods[0]!.pieces).toEqual([
      { piece: 0, at: 0 },
      { piece: 0, at: 653 },
      { piece: 0, at: 1306 },
    ]);
  });

  it('lays pieces along a roll', () => {
    const pieces = [{ width: 150, height: 100, count: 7, turn: false }];
    expect(cutStrip({ width: 450, pieces })).toMatchObject({ length: 300 });
  });

  it('says how many found no room where the stock has an end', () => {
    // One rod of 10 holds two of 5 and no third.
    const problem = { stock: [{ length: 10, count: 1 }], pieces: [{ length: 5, count: 3 }] };
    expect(cutLengths(problem).left).toEqual([1]);
  });

  const sheet = { width: 60, height: 40 };
  const piece = { width: 10, height: 10, count: 1, turn: true };
  it.each([
    ['no problem', undefined, TypeError, 'the problem must be an object, not left out.'],
    ['no sheets', { sheets: [], pieces: [] }, RangeError, 'sheets must hold at least 1.'],
    [
      'sheets that are no list',
      { sheets: sheet, pieces: [] },
      TypeError,
      'sheets must be a list, not an object.',
    ],
    [
      'a width as text',
      { sheets: [{ ...sheet, width: '60' }], pieces: [piece] },
      TypeError,
      'sheets[0].width must be a whole number, not the text "60".',
    ],
    [
      'half a millimetre',
      { sheets: [sheet], pieces: [piece, { ...piece, height: 10.5 }] },
      RangeError,
      'pieces[1].height must be a whole number from 1 to 9007199254740991, not 10.5.',
    ],
    [
      'a price below zero',
      { sheets: [{ ...sheet, price: -1 }], pieces: [piece] },
      RangeError,
      'sheets[0].price must be a whole number from 0 to 9007199254740991, not -1.',
    ],
    [
      'no word about turning',
      { sheets: [sheet], pieces: [{ width: 1, height: 1, count: 1 }] },
      TypeError,
      'pieces[0].turn must be true or false, not left out.',
    ],
    [
      'a piece larger than the sheet',
      { sheets: [sheet], pieces: [piece, { ...piece, width: 61 }] },
      RangeError,
      'pieces[1] fits no sheet.',
    ],
    [
      'an area beyond what is exact',
      { sheets: [{ width: 1e9, height: 1e9 }], pieces: [{ width: 1e9, height: 1e9, count: 1, turn: true }] },
      RangeError,
      'The area of all pieces, 1000000000000000000, is too large to be exact: use a coarser unit.',
    ],
  ])('refuses %s, and says what is wrong', (_, problem, kind, message) => {
    const call = (): unknown => cutSheets(problem as never);
    expect(call).toThrow(kind);
    expect(call).toThrow(message);
  });

  it('refuses a piece longer than every rod, or wider than the strip', () => {
    expect(() => cutLengths({ stock: [{ length: 10 }], pieces: [{ length: 11, count: 1 }] })).toThrow(
      'pieces[0] is longer than every rod.',
    );
    expect(() => cutStrip({ width: 5, pieces: [piece] })).toThrow('pieces[0] is wider than the strip.');
    expect(() => cutStrip({ width: 50, pieces: [piece], gap: -1 })).toThrow(
      'gap must be a whole number from 0',
    );
  });
});
