import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Guide, MaterialRow, Piece } from '../../../src/core/model/guide.ts';
import type { Material, Pack } from '../../../src/core/model/material.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import type { CutLayout, CutPiece, Plan } from '../../../src/core/plan/result.ts';
import { exact, exactText, zero } from '../../../src/core/quantity/exact.ts';
import { quantity } from '../../../src/core/quantity/quantity.ts';
import { printHolding } from '../../../src/core/quantity/print.ts';
import {
  aGuide,
  aMaterial,
  aPiece,
  aRow,
  aWorkspace,
  amount,
  money,
  pack,
  planOf,
  said,
} from './a-workspace.ts';

function ofFelt(pieces: readonly Piece[], more: Partial<MaterialRow> = {}): MaterialRow {
  return aRow('felt', undefined, { pieces, ...more });
}

function plan(
  rows: readonly MaterialRow[],
  packs: readonly Pack[],
  more: { wanted?: number; material?: Partial<Material>; settings?: Partial<PlanSettings> } = {},
): Plan {
  const felt = aMaterial('felt', { packs, form: 'sheet', ...more.material });
  const workspace = aWorkspace({ materials: [felt], guides: [aGuide('x', { materials: rows })] });
  return planOf(workspace, [{ guide: 'x', wanted: more.wanted ?? 1 }], {
    effort: '1/1000',
    ...more.settings,
  });
}

/** `1.50: 2 sheets; left 300 mm x 100 mm`. */
function told({ purchases: [purchase], cutting: [cut] }: Plan): string {
  const left = purchase!.leftPieces!.map(printHolding).join(', ') || 'nothing';
  return `${exactText(purchase!.cost!)}: ${cut!.layouts.length} cut; left ${left}`;
}

describe('what is cut', () => {
  it.each([
    // 300 x 200: two upright one above the other, one turned beside them: 3 a sheet; two alone still take all its length
    ['turned where it may be', [aPiece('skin', '200 mm x 100 mm', 5)], {}, '3: 2 cut; left nothing'],
    // only the two upright: 2 a sheet; the last has one, and 100 mm of length above it
    [
      'never turned where the grain has a direction',
      [{ ...aPiece('skin', '200 mm x 100 mm', 5), turn: false }],
      {},
      '4.5: 3 cut; left 300 mm x 100 mm',
    ],
    // 2 mm between: 100 + 2 + 100 = 202 of 300 across, turned, and a third would need 304
    [
      'with its gap',
      [aPiece('skin', '200 mm x 100 mm', 5)],
      { gap: quantity({ value: exact(2), unit: 'mm' }) },
      '4.5: 3 cut; left nothing',
    ],
    // 4 of 150 x 100 fill a sheet; 10 % waste is one whole piece more: 5
    [
      'with whole extra pieces',
      [aPiece('skin', '150 mm x 100 mm', 4)],
      { waste: '1/10' },
      '3: 2 cut; left 300 mm x 100 mm',
    ],
  ] as const)('lies on sheets of 300 mm x 200 mm at 1.50, %s', (_, pieces, row, expected) => {
    expect(told(plan([ofFelt(pieces, row)], [pack('300 mm x 200 mm', '1.50 GBP')]))).toBe(expected);
  });

  it('is bought in packs of several sheets, and what is not cut is left over', () => {
    // 4 sheets: 4 x 2.00 = 8.00, or a pack of five at 7.50, of which one stays whole
    const packs = [pack('300 mm x 200 mm', '2 GBP'), pack('5 x 300 mm x 200 mm', '7.50 GBP')];
    const made = plan([ofFelt([aPiece('skin', '300 mm x 200 mm')])], packs, { wanted: 4 });
    expect(told(made)).toBe('7.5: 4 cut; left 300 mm x 200 mm');
    expect(made.cutting[0]!.layouts.map((layout) => layout.pack)).toEqual([1, 1, 1, 1]);
    expect(said(made.purchases[0]!.left)).toBe('60000 mm²');
  });

  it('is bought in the sheets that cost least together, of several sizes', () => {
    // five pieces of 300 x 200: one large sheet (four of them) at 3.50 and a small one at 1.00; two large cost 7.00
    const packs = [pack('300 mm x 200 mm', '1 GBP'), pack('600 mm x 400 mm', '3.50 GBP')];
    expect(told(plan([ofFelt([aPiece('skin', '300 mm x 200 mm', 5)])], packs))).toMatch(/^4.5: 2 cut/);
  });

  it('takes the least area where nobody knows a price', () => {
    const packs = [pack('600 mm x 400 mm'), pack('300 mm x 200 mm')];
    const { purchases, cutting, warnings } = plan([ofFelt([aPiece('skin', '300 mm x 200 mm')])], packs);
    expect(purchases[0]!.packs).toEqual([{ pack: 1, count: 1 }]);
    expect('cost' in purchases[0]!).toBe(false);
    expect([
      cutting[0]!.bound.of,
      exactText(cutting[0]!.bound.value),
      exactText(cutting[0]!.reached),
    ]).toEqual(['sheets', '1', '1']);
    expect(warnings.map(({ code }) => code)).toContain('price-missing');
  });

  it('takes a sheet without a price where no other is large enough', () => {
    const packs = [pack('100 mm x 100 mm', '1 GBP'), pack('300 mm x 200 mm')];
    const { purchases } = plan([ofFelt([aPiece('skin', '300 mm x 200 mm')])], packs);
    expect(purchases[0]!.packs).toEqual([{ pack: 1, count: 1 }]);
  });

  it('lies across a roll, as short as can be', () => {
    // 1.4 m wide: two of 700 x 500 beside each other, so four take 1 m of it
    const roll = { form: 'roll' as const };
    const packs = [pack('1.4 m x 1 m', '9.50 GBP'), pack('1.4 m x 5 m', '41 GBP')];
    const four = plan([ofFelt([aPiece('skin', '700 mm x 500 mm')])], packs, { wanted: 4, material: roll });
    expect(told(four)).toBe('9.5: 1 cut; left nothing');
    const ten = plan([ofFelt([aPiece('skin', '700 mm x 500 mm')])], packs, { wanted: 10, material: roll });
    // ten take 2.5 m: three short rolls at 28.50
    expect(told(ten)).toBe('28.5: 3 cut; left 1400 mm x 500 mm');
    // twenty take 5 m: one long roll at 41.00 is cheaper than five short ones at 47.50
    const twenty = plan([ofFelt([aPiece('skin', '700 mm x 500 mm')])], packs, { wanted: 20, material: roll });
    expect([told(twenty), exactText(twenty.cutting[0]!.layouts[0]!.used)]).toEqual([
      '41: 1 cut; left nothing',
      '5000',
    ]);
  });

  it('is sawn from rods, each cut as wide as the saw', () => {
    // 1 m: 3 x 320 + 2 x 2 = 964, so three a rod. Five: two rods; of the second 1000 - 642 - 2 = 356 are left, of the
    // first 34, from which nothing here could be cut
    const made = plan(
      [ofFelt([aPiece('rib', '320 mm', 5)], { gap: { value: '2', unit: 'mm' } })],
      [pack('1 m', '1.70 GBP')],
      {
        material: { form: 'length' },
      },
    );
    expect(told(made)).toBe('3.4: 2 cut; left 356 mm');
    const [first] = made.cutting[0]!.layouts;
    expect(first!.pieces.map(({ y }) => exactText(y))).toEqual(['0', '322', '644']);
    expect([exactText(made.cutting[0]!.usedFraction), exactText(first!.width)]).toEqual(['0.8', '0']);
  });

  it('shares a sheet with other rows and guides, each piece with its model', () => {
    const guide = (id: string): Guide =>
      aGuide(id, { materials: [ofFelt([aPiece(`skin-${id}`, '150 mm x 200 mm')])] });
    const felt = aMaterial('felt', { packs: [pack('300 mm x 200 mm', '1.50 GBP')], form: 'sheet' });
    const workspace = aWorkspace({ materials: [felt], guides: [guide('a'), guide('b')] });
    const made = planOf(workspace, [
      { guide: 'a', wanted: 1 },
      { guide: 'b', wanted: 1 },
    ]);
    expect(made.cutting[0]!.layouts).toHaveLength(1);
    expect(made.cutting[0]!.layouts[0]!.pieces.map(({ line, piece, model }) => [line, piece, model])).toEqual(
      [
        [0, 'skin-a', 1],
        [1, 'skin-b', 1],
      ],
    );
    // the one sheet of 1.50 is borne by halves, as each uses half
    expect(made.cost.each.map(({ outlay }) => exactText(outlay))).toEqual(['0.75', '0.75']);
  });

  it('is numbered by the first model that it is for, and extra pieces by none', () => {
    const row = ofFelt([aPiece('skin', '100 mm x 100 mm', 1)], {
      for: { per: 'every', models: 3 },
      waste: '1/10',
    });
    const made = plan([row], [pack('300 mm x 200 mm', '1.50 GBP')], { wanted: 7 });
    const models = made.cutting[0]!.layouts.flatMap(({ pieces }) => pieces.map(({ model }) => model));
    expect(models).toEqual([1, 4, 7, undefined]);
  });

  it('comes with amounts that have no size, taken from what is left', () => {
    // half a sheet is cut; 40,000 mm² more than the 30,000 left: another sheet, of which 50,000 stay
    const rows = [
      ofFelt([aPiece('skin', '300 mm x 100 mm')]),
      { ...aRow('felt', undefined, { id: 'rest' }), amount: amount('400 cm²') },
    ];
    const made = plan(rows, [pack('300 mm x 200 mm', '1.50 GBP')]);
    expect([exactText(made.purchases[0]!.cost!), said(made.purchases[0]!.left)]).toEqual(['3', '50000 mm²']);
    expect(made.warnings.map(({ code }) => code)).toContain('amount-beside-pieces');
  });
});

describe('what cannot be cut', () => {
  const large = [ofFelt([aPiece('skin', '400 mm x 100 mm')])];

  it('refuses the plan where a piece fits no pack', () => {
    const materials = [aMaterial('felt', { name: 'Felt', form: 'sheet', packs: [pack('300 mm x 200 mm')] })];
    const workspace = aWorkspace({ materials, guides: [aGuide('x', { materials: large })] });
    const made = makePlan(workspace, [{ guide: 'x', wanted: 1 }], { today: '2026-11-25' });
    expect('refused' in made && made.refused).toMatchObject([
      { code: 'piece-fits-no-pack', facts: { material: 'Felt' } },
    ]);
  });

  it('is planned all the same where nothing is for sale', () => {
    const { purchases, cutting } = plan(large, []);
    expect([purchases[0]!.packs, cutting]).toEqual([[], []]);
  });
});

describe('what is on hand', () => {
  const packs = [pack('300 mm x 200 mm', '1.50 GBP')];
  const skins = (count: number) => [ofFelt([aPiece('skin', '150 mm x 100 mm', count)])];
  const onHand = (...pieces: string[]) => ({
    settings: { stock: { felt: { pieces: pieces.map((text) => pack(text).holds) } } },
  });

  it('is cut first, and what is left of it stays in stock', () => {
    // 300 x 150 holds three turned, 100 beside 100 beside 100; nothing is bought
    const made = plan(skins(3), packs, onHand('300 mm x 150 mm', '2 x 150 mm x 100 mm'));
    expect(made.purchases[0]).toMatchObject({ packs: [] });
    expect(exactText(made.purchases[0]!.cost!)).toBe('0');
    expect(said(made.purchases[0]!.fromStock)).toBe('45000 mm²');
    expect(made.cutting[0]!.layouts.every((layout) => layout.pack === undefined)).toBe(true);
  });

  it('is filled up by what is bought', () => {
    const made = plan(skins(5), packs, onHand('150 mm x 100 mm'));
    expect([
      exactText(made.purchases[0]!.cost!),
      made.cutting[0]!.layouts.map((layout) => layout.pack),
    ]).toEqual(['1.5', [undefined, 0]]);
    expect(made.cutting[0]!.layouts[0]!.pieces[0]!.model).toBe(1);
  });

  it.each<[string, PlanSettings['stock'], string[]]>([
    // a piece of 30,000 mm² and 40,000 more: 10,000 are missing from a sheet of 60,000, another is bought
    ['nothing', undefined, ['3', '0 mm²', '50000 mm²']],
    ['the 10,000 that are missing', { felt: { value: '100', unit: 'cm²' } }, ['1.5', '10000 mm²', '0 mm²']],
    [
      '10,000 more than the amount',
      { felt: { value: '500', unit: 'cm²' } },
      ['1.5', '40000 mm²', '40000 mm²'],
    ],
    ['a sheet', onHand('300 mm x 200 mm').settings.stock, ['1.5', '60000 mm²', '50000 mm²']],
    ['two sheets', onHand('2 x 300 mm x 200 mm').settings.stock, ['0', '70000 mm²', '50000 mm²']],
    // too small for the piece: an offcut for the amount
    ['an offcut', onHand('100 mm x 100 mm').settings.stock, ['1.5', '10000 mm²', '0 mm²']],
  ])('serves amounts beside pieces: of sheets of 300 mm x 200 mm, with %s', (_, stock, expected) => {
    const rows = [
      ofFelt([aPiece('skin', '300 mm x 100 mm')]),
      { ...aRow('felt', undefined, { id: 'rest' }), amount: amount('400 cm²') },
    ];
    const [bought] = plan(rows, packs, stock ? { settings: { stock } } : {}).purchases;
    expect([exactText(bought!.cost!), said(bought!.fromStock), said(bought!.left)]).toEqual(expected);
  });

  it('is filled up by several packs for amounts, each in the order of the material', () => {
    // 30,000 mm² are left of the sheet of the piece: 130,000 more are three sheets; 10,000 more are one small one
    const bought = (text: string, ...packs: Pack[]) => {
      const rows = [
        ofFelt([aPiece('skin', '300 mm x 100 mm')]),
        { ...aRow('felt', undefined, { id: 'rest' }), amount: amount(text) },
      ];
      const [{ packs: chosen, left }] = plan(rows, packs).purchases as [Plan['purchases'][number]];
      return [chosen, said(left)];
    };
    const [small, sheet] = [pack('100 mm x 100 mm', '0.30 GBP'), packs[0]!];
    expect(bought('1600 cm²', sheet)).toEqual([[{ pack: 0, count: 4 }], '50000 mm²']);
    expect(bought('400 cm²', small, sheet)).toEqual([
      [
        { pack: 0, count: 1 },
        { pack: 1, count: 1 },
      ],
      '0 mm²',
    ]);
  });

  it('serves lengths beside pieces of rods', () => {
    // three of 320 mm leave 40 mm of a rod of 1 m, which is scrap; 200 mm more come from the 300 mm that are there
    const rows = [
      ofFelt([aPiece('rib', '320 mm', 3)]),
      { ...aRow('felt', undefined, { id: 'rest' }), amount: amount('20 cm') },
    ];
    const rods = (...pieces: string[]) =>
      plan(rows, [pack('1 m', '1.70 GBP')], { material: { form: 'length' }, ...onHand(...pieces) })
        .purchases[0]!;
    const [none, some] = [rods(), rods('300 mm')];
    expect([none.packs, said(none.left)]).toEqual([[{ pack: 0, count: 2 }], '0.8 m']);
    expect([some.packs, said(some.fromStock), said(some.left)]).toEqual([
      [{ pack: 0, count: 1 }],
      '0.2 m',
      '0.1 m',
    ]);
  });

  it('is left alone where only its area is known', () => {
    const made = plan(skins(1), packs, { settings: { stock: { felt: { value: '60000', unit: 'mm²' } } } });
    expect(exactText(made.purchases[0]!.cost!)).toBe('1.5');
    expect(made.warnings).toContainEqual({
      code: 'stock-without-size',
      severity: 'warning',
      places: [],
      facts: { material: 'felt' },
    });
  });

  it('is one rod where a length of rod is on hand', () => {
    const made = plan([ofFelt([aPiece('rib', '320 mm', 3)])], [pack('1 m', '1.70 GBP')], {
      material: { form: 'length' },
      settings: { stock: { felt: { value: '1', unit: 'm' } } },
    });
    expect(made.purchases[0]!.packs).toEqual([]);
    // three of 320 mm
    expect([said(made.purchases[0]!.fromStock), said(made.purchases[0]!.needed)]).toEqual([
      '0.96 m',
      '0.96 m',
    ]);
  });

  it('is what the plan before left over', () => {
    const before = plan(skins(4 + 2), packs);
    const again = plan(skins(2), packs, {
      settings: { stock: { felt: { pieces: before.purchases[0]!.leftPieces! } } },
    });
    expect([told(before), again.purchases[0]!.packs]).toEqual(['3: 2 cut; left 300 mm x 100 mm', []]);
  });
});

describe('sheets of several suppliers', () => {
  it('are chosen with what delivery costs', () => {
    // felt is 1.00 cheaper far away, where delivery costs 5.00; the tape comes from near in any case
    const at = (size: string, price: string, from: string) => pack(size, price, { from });
    const felt = aMaterial('felt', {
      form: 'sheet',
      packs: [at('300 mm x 200 mm', '1 GBP', 'far'), at('400 mm x 200 mm', '2 GBP', 'near')],
    });
    const tape = aMaterial('tape', { packs: [at('10 m', '3 GBP', 'near')] });
    const suppliers = {
      near: { name: 'near', delivery: money('5 GBP') },
      far: { name: 'far', delivery: money('5 GBP') },
    };
    const guide = aGuide('x', {
      materials: [ofFelt([aPiece('skin', '300 mm x 200 mm')]), aRow('tape', '1 m')],
    });
    const made = planOf(aWorkspace({ program: { suppliers }, materials: [felt, tape], guides: [guide] }), [
      { guide: 'x', wanted: 1 },
    ]);
    expect(made.purchases[0]!.packs).toEqual([{ pack: 1, count: 1 }]);
    expect(exactText(made.cost.outlay)).toBe('10');
  });
});

const side = fc.integer({ min: 20, max: 300 });
const anyPieces = fc.array(
  fc.record({ width: side, height: side, count: fc.integer({ min: 1, max: 4 }), turn: fc.boolean() }),
  { minLength: 1, maxLength: 4 },
);
const anyPacks = fc.array(
  fc.record({
    width: fc.integer({ min: 300, max: 900 }),
    height: fc.integer({ min: 300, max: 900 }),
    count: fc.integer({ min: 1, max: 5 }),
    price: fc.integer({ min: 100, max: 3000 }),
  }),
  { minLength: 1, maxLength: 3 },
);

describe('any cutting plan', () => {
  const each = (check: (made: Plan, packs: readonly Pack[]) => void) =>
    fc.assert(
      fc.property(
        anyPieces,
        anyPacks,
        fc.integer({ min: 0, max: 3 }),
        fc.integer({ min: 1, max: 4 }),
        fc.constantFrom('sheet' as const, 'roll' as const),
        (kinds, sheets, gap, wanted, form) => {
          const pieces = kinds.map(({ width, height, count, turn }, i) => ({
            ...aPiece(`p${i}`, `${width} mm x ${height} mm`, count),
            turn,
          }));
          const packs = sheets.map(({ width, height, count, price }) =>
            pack(`${count} x ${width} mm x ${height} mm`, `${price / 100} GBP`),
          );
          check(
            plan([ofFelt(pieces, { gap: { value: String(gap), unit: 'mm' }, waste: '1/20' })], packs, {
              wanted,
              material: { form },
            }),
            packs,
          );
        },
      ),
      { numRuns: 15 },
    );

  it('has every piece of every model, inside its sheet, and none on another', () => {
    each((made) => {
      const [cut] = made.cutting;
      const cutOf = (piece: string) =>
        cut!.layouts.flatMap(({ pieces }) => pieces).filter((one) => one.piece === piece);
      for (const { piece, count } of made.lines[0]!.rows[0]!.pieces) {
        const perModel = made.lines[0]!.at.materials[0]!.pieces.find(({ id }) => id === piece)!.count;
        expect(cutOf(piece)).toHaveLength(count);
        for (let model = 1; model <= made.lines[0]!.made; model++)
          expect(cutOf(piece).filter((one) => one.model === model)).toHaveLength(perModel);
      }
      for (const layout of cut!.layouts) expectApart(layout);
    });
  });

  it('is cut from the packs that are bought, which cost no less than the bound', () => {
    each((made, packs) => {
      const [cut, purchase] = [made.cutting[0]!, made.purchases[0]!];
      for (const [index, { holds }] of packs.entries()) {
        const bought = (purchase.packs.find((one) => one.pack === index)?.count ?? 0) * holds.count;
        const used = cut.layouts.filter((layout) => layout.pack === index);
        expect(used.length).toBeLessThanOrEqual(bought);
        const sides = 'sides' in holds.each ? holds.each.sides.map(({ value }) => value) : [];
        for (const { width, length } of used) expect([width, length].map(exactText)).toEqual(sides);
      }
      expect(cut.reached.equals(purchase.cost!)).toBe(true);
      expect(cut.reached.compare(cut.bound.value)).toBeGreaterThanOrEqual(0);
    });
  });

  it('needs no more for what is left over than there was', () => {
    each((made, packs) => {
      const {
        purchases: [purchase],
      } = made;
      const bought = purchase!.packs.reduce(
        (sum, { pack: index, count }) => sum.add(areaOf(packs[index]!).mul(count)),
        zero,
      );
      expect(purchase!.left.value.add(purchase!.needed.value).compare(bought)).toBeLessThanOrEqual(0);
    });
  });
});

function areaOf({ holds: { count, each } }: Pack) {
  return 'sides' in each ? each.sides.reduce((all, { value }) => all.mul(value), exact(count)) : zero;
}

function expectApart({ width, length, pieces, used }: CutLayout): void {
  const right = ({ x, width: w }: CutPiece) => x.add(w);
  const top = ({ y, height }: CutPiece) => y.add(height);
  for (const [i, a] of pieces.entries()) {
    expect([right(a).compare(width) <= 0, top(a).compare(used) <= 0, used.compare(length) <= 0]).toEqual([
      true,
      true,
      true,
    ]);
    for (const b of pieces.slice(i + 1))
      expect(
        right(a).compare(b.x) <= 0 ||
          right(b).compare(a.x) <= 0 ||
          top(a).compare(b.y) <= 0 ||
          top(b).compare(a.y) <= 0,
      ).toBe(true);
  }
}
