import { describe, expect, it } from 'vitest';
import { planAt } from '../../../src/core/model/plan-at.ts';
import { needsOf } from '../../../src/core/plan/scale/scale.ts';
import { aGuide, aMix, aPiece, aRow, aToolRow, amount, said } from './a-workspace.ts';

function rowsOf(made: number, ...rows: ReturnType<typeof aRow>[]) {
  const at = planAt(aGuide('x', { materials: rows, tools: [aToolRow('pot', { holds: 4 })] }));
  return needsOf(at, made, made).rows.map(({ total, usual, one }) => [said(total), said(usual), said(one)]);
}

describe('a row of materials', () => {
  it('is taken once for each model, waste multiplied', () => {
    expect(rowsOf(12, aRow('gel', '1.2 L', { waste: '1/20' }))).toEqual([['15.12 L', '15.12 L', '1.2 L']]); // 12 x 1.2 x 1.05
  });

  it('is taken in full for a started portion', () => {
    const every4 = aRow('dye', '5 g', { for: { per: 'every', models: 4 } });
    const eachPot = aRow('salt', '3 g', { for: { per: 'tool', tool: 'pot' } });
    const batch = aRow('soap', '7 g', { for: { per: 'batch' } });
    expect(rowsOf(10, every4, eachPot, batch)).toEqual([
      ['15 g', '15 g', '5 g'], // 4 + 4 + 2 models: 3 portions
      ['9 g', '9 g', '3 g'],
      ['7 g', '7 g', '7 g'],
    ]);
  });

  it('buys the upper end of a range and costs the usual one', () => {
    const row = { ...aRow('psyllium', undefined), amount: amount('8–14 g', '10 g') };
    expect(rowsOf(3, row)).toEqual([['42 g', '30 g', '14 g']]);
  });

  it('that does for many models is taken whole and used in part', () => {
    const spray = aRow('spray', '400 mL', { does: 30 });
    expect(rowsOf(12, spray)).toEqual([['400 mL', '160 mL', '400 mL']]); // 12/30 x 400
    expect(rowsOf(30, spray)).toEqual([['400 mL', '400 mL', '400 mL']]);
    expect(rowsOf(31, spray)).toEqual([['800 mL', '1240/3 mL', '400 mL']]);
  });

  it('of pieces counts whole extra ones for waste', () => {
    // 21 models, 1 skin of 150 x 100 mm and 2 tabs of 20 x 10 mm; 5 %: 21 + 2 skins, 42 + 3 tabs
    // 23 x 15,000 + 45 x 200 = 354,000 mm²
    const at = planAt(
      aGuide('x', {
        materials: [
          aRow('felt', undefined, {
            waste: '1/20',
            pieces: [aPiece('skin', '150 mm x 100 mm'), aPiece('tab', '20 mm x 10 mm', 2)],
          }),
        ],
      }),
    );
    const [row] = needsOf(at, 21, 21).rows;
    expect(row!.pieces).toEqual([
      { piece: 'skin', count: 23 },
      { piece: 'tab', count: 45 },
    ]);
    expect([said(row!.total), said(row!.usual), said(row!.one)]).toEqual([
      '354000 mm²',
      '354000 mm²',
      '15400 mm²',
    ]);
  });
});

describe('a mix', () => {
  const gel = aMix(
    'gel',
    '1.2 L',
    [
      { use: 'powder', amount: amount('120 g') },
      { use: 'husk', amount: amount('8–14 g', '10 g') },
    ],
    '1/20',
  );

  it('is mixed with what stays in the pot', () => {
    // 12 x 1.2 L x 1.05 = 15.12 L; / 0.95 = 1512/95 L; powder 120 g for each 1.2 L: 30240/19 g
    const at = planAt(aGuide('x', { mixes: [gel], materials: [aRow('gel', '1.2 L', { waste: '1/20' })] }));
    const [mix] = needsOf(at, 12, 12).mixes;
    expect(said(mix!.total)).toBe('1512/95 L');
    expect(
      mix!.ingredients.map(({ use, total, usual, one }) => [use, said(total), said(usual), said(one)]),
    ).toEqual([
      ['powder', '30240/19 g', '30240/19 g', '120 g'],
      ['husk', '3528/19 g', '2520/19 g', '14 g'],
    ]);
  });

  it('is one pot for all rows that draw on it, in any unit of volume', () => {
    const rows = [aRow('gel', '900 mL', { id: 'base' }), aRow('gel', '0.24 L', { id: 'top' })];
    const at = planAt(aGuide('x', { mixes: [gel], materials: rows }));
    expect(said(needsOf(at, 1, 1).mixes[0]!.total)).toBe('1.2 L'); // 1.14 / 0.95
  });

  it('that no row uses takes nothing', () => {
    const at = planAt(aGuide('x', { mixes: [gel] }));
    expect(said(needsOf(at, 5, 5).mixes[0]!.ingredients[0]!.total)).toBe('0 g');
  });
});
