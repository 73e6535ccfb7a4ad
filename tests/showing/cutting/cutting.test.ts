import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Holding } from '../../../src/core/model/material.ts';
import type { CutLayout, CuttingPlan, Purchase } from '../../../src/core/plan/result.ts';
import { exact } from '../../../src/core/quantity/exact.ts';
import { cuttingLines } from '../../../src/showing/terminal/plan-text-cutting.ts';
import { showCutting } from '../../../src/showing/cutting/show-cutting.ts';
import type { ShownCutting } from '../../../src/showing/shown/shown-cutting.ts';
import { bench } from '../bench.ts';
import { cuttingOf, offcut, plain, planOf, rod, sheet, skin } from '../by-hand.ts';
import { leavesOf } from '../leaves.ts';

function shownOf(layouts: readonly CutLayout[], rest: Partial<CuttingPlan> = {}): ShownCutting {
  const cutting = cuttingOf(layouts, rest);
  return showCutting('cutting[0]', cutting, planOf(4, { cutting: [cutting] }), bench);
}
const purchaseOf = (leftPieces: readonly Holding[] | undefined): Purchase => ({
  material: 'felt-3mm',
  needed: { value: exact(15000), unit: 'mm²' },
  fromStock: { value: exact(0), unit: 'mm²' },
  packs: [{ pack: 0, count: 1 }],
  left: { value: exact(0), unit: 'mm²' },
  ...(leftPieces ? { leftPieces } : {}),
});
const rowOf = (cutting: ShownCutting, layout: number, row: number): readonly string[] => {
  const { number, piece, model, size, fromLeft, fromBottom } = cutting.layouts[layout]!.pieces[row]!;
  return [number, piece, model, size, fromLeft, fromBottom].map(({ text }) => plain(text));
};

describe('what is cut', () => {
  it('is said as so many sheets of a size, those from stock apart, and the share that is used', () => {
    const fromStock = offcut([skin(3, 0, 0)], { width: exact(200), length: exact(150) });
    const { says } = shownOf([sheet([skin(1, 0, 0)]), sheet([skin(2, 0, 0)]), fromStock]);
    expect(plain(says.text)).toBe(
      '2 sheets of 450 mm × 300 mm and 1 sheet of 200 mm × 150 mm from stock; 83 % used.',
    );
  });

  it('never says that more is used than is: 999 thousandths are 99 %', () => {
    expect(plain(shownOf([sheet([])], { usedFraction: exact('999/1000') }).says.text)).toMatch(
      /; 99 % used\.$/,
    );
  });

  const bounds: readonly (readonly [Partial<CuttingPlan>, string])[] = [
    [{ bound: { of: 'cost', value: exact(4) } }, 'No cutting plan costs less.'],
    [{ bound: { of: 'sheets', value: exact(3) }, reached: exact(3) }, 'No cutting plan takes fewer.'],
    // 4.00 reached, 3.205 the bound: 0.795 is rounded up.
    [
      { bound: { of: 'cost', value: exact('641/200') } },
      'A cutting plan that costs up to £0.80 less may exist.',
    ],
    // 6 sheets reached; at least 4.2, so at least 5.
    [
      { bound: { of: 'sheets', value: exact('21/5') }, reached: exact(6) },
      'A cutting plan with up to 1 sheet fewer may exist.',
    ],
    // 270,000 mm² reached, 250,050 the bound: 199.5 cm², rounded up.
    [
      { bound: { of: 'length', value: exact(250050) }, reached: exact(270000) },
      'A cutting plan that takes up to 200 cm² less may exist.',
    ],
    [
      { by: 'lengths', bound: { of: 'length', value: exact(3960) }, reached: exact(4000) },
      'A cutting plan that takes up to 40 mm less may exist.',
    ],
  ];
  it.each(bounds)('says how near the plan is to the least: %#', (rest, sentence) => {
    expect(plain(shownOf([sheet([skin(1, 0, 0)])], rest).bound.text)).toBe(sentence);
  });
});

describe('a layout', () => {
  const three = [1, 2, 3].map((model) => sheet([skin(model, 0, 0), skin(model + 3, 152, 0)]));

  it('stands once for sheets that are cut alike, with the model of each in their order', () => {
    const other = sheet([skin(9, 0, 0)]);
    const cutting = shownOf([three[0]!, other, three[1]!, three[2]!]);
    expect(cutting.layouts.map(({ title }) => plain(title.text))).toEqual([
      'Sheets 1 and 3–4, all cut like this',
      'Sheet 2',
    ]);
    expect(rowOf(cutting, 0, 1)).toEqual(['2', 'Skin', '4, 5 and 6', '150 × 100', '152', '0']);
  });

  it('keeps sheets apart that differ in size, in a place or in a piece', () => {
    const wide = sheet(three[0]!.pieces, { width: exact(500) });
    const moved = sheet([skin(1, 0, 0), skin(4, 153, 0)]);
    const base = sheet([skin(1, 0, 0), skin(4, 152, 0, { piece: 'base' })]);
    expect(shownOf([three[0]!, wide, moved, base]).layouts).toHaveLength(4);
  });

  it('numbers its pieces by rows from the lower left corner, whatever their order in the plan', () => {
    const cutting = shownOf([sheet([skin(3, 0, 100), skin(2, 150, 0), skin(1, 0, 0)])]);
    expect(cutting.layouts[0]!.pieces.map(({ number, model }) => `${number.text}: ${model.text}`)).toEqual([
      '1: 1',
      '2: 2',
      '3: 3',
    ]);
  });

  it('says of a turned piece how it lies, of an extra one that it is spare, and what is left whole', () => {
    const turned = skin(undefined, 0, 0, { width: exact(100), height: exact(150), turned: true });
    const cutting = shownOf([sheet([turned])]);
    expect(rowOf(cutting, 0, 0)).toEqual(['1', 'Skin', 'spare', '100 × 150, turned', '0', '0']);
    expect(plain(cutting.layouts[0]!.left.text)).toBe('450 mm × 150 mm left whole');
    expect(plain(cutting.layouts[0]!.holds.text)).toBe('1 × Skin, 150 mm × 100 mm');
  });

  it('gives pieces of one length that follow each other one row, and no place', () => {
    const cutting = shownOf(
      [
        rod([
          [1, 0, 320],
          [1, 322, 320],
          [2, 644, 200],
        ]),
      ],
      { by: 'lengths' },
    );
    expect(cutting.layouts[0]!.pieces).toHaveLength(2);
    expect(rowOf(cutting, 0, 0)).toEqual(['1–2', 'Rib', '1', '320 mm', '', '']);
    expect(plain(cutting.layouts[0]!.left.text)).toBe('156 mm left');
  });

  it('says metres of a long tape, and millimetres of a rod', () => {
    const tape = { ...rod([[1, 0, 280]]), length: exact(10000) };
    const { says, layouts } = shownOf([tape], { by: 'lengths' });
    expect(plain(says.text)).toMatch(/^1 length of 10 m;/);
    expect(plain(layouts[0]!.left.text)).toBe('9.72 m left');
    expect(plain(layouts[0]!.pieces[0]!.size.text)).toBe('280 mm');
  });
});

describe('the drawing of a layout', () => {
  it('has a box for each piece, within the sheet, at its place to a tenth of a millimetre', () => {
    const inch = exact('127/5');
    const { drawing } = shownOf([sheet([skin(1, 0, 0), skin(2, 200, 100, { x: inch })])]).layouts[0]!;
    expect(drawing.boxes.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [25.4, 100],
    ]);
    expect(drawing.left).toEqual({ x: 0, y: 200, width: 450, height: 100 });
  });

  it('draws a roll a tenth of its width beyond what is used, and no further than it goes', () => {
    const roll = sheet([skin(1, 0, 0)], { width: exact(1400), length: exact(5000) });
    const { drawing } = shownOf([roll], { by: 'roll' }).layouts[0]!;
    expect([drawing.height, drawing.goesOn]).toEqual([240, true]);
    const short = shownOf([{ ...roll, length: exact(120) }], { by: 'roll' }).layouts[0]!.drawing;
    expect([short.height, short.goesOn]).toEqual([120, false]);
  });

  it('draws a length half as far again as it is used, marks where its pieces end, and no end that is not drawn', () => {
    const tape = {
      ...rod([
        [1, 0, 280],
        [2, 280, 280],
      ]),
      length: exact(10000),
    };
    const { drawing } = shownOf([tape], { by: 'lengths' }).layouts[0]!;
    expect([drawing.width, drawing.goesOn]).toEqual([840, true]);
    expect(drawing.left).toEqual({ x: 560, y: 0, width: 280, height: 1 });
    expect(drawing.across.map(({ at }) => at)).toEqual([280, 560]);
    const short = shownOf([{ ...tape, length: exact(700) }], { by: 'lengths' }).layouts[0]!.drawing;
    expect([short.width, short.goesOn]).toEqual([700, false]);
    expect(short.across.at(-1)!.at).toBe(700);
  });

  it('marks its edges where a rule is read, never two marks nearer than a label is wide', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 12 }), (places) => {
        const pieces = places.map((x, i) => skin(i + 1, x, x % 200));
        const { drawing } = shownOf([sheet(pieces)]).layouts[0]!;
        for (const [marks, least] of [
          [drawing.across, 45],
          [drawing.up, 22.5],
        ] as const) {
          const apart = marks.slice(1).map(({ at }, i) => at - marks[i]!.at);
          expect(apart.filter((distance) => distance < least)).toEqual([]);
        }
        expect(drawing.across.at(-1)!.at).toBe(450);
        const inside = drawing.boxes.filter(
          ({ x, y, width, height }) => x >= 0 && y >= 0 && x + width <= 450 && y + height <= 300,
        );
        expect(inside).toHaveLength(pieces.length);
      }),
      { numRuns: 40 },
    );
  });
});

it('every text of a cutting plan has a key of its own', () => {
  const keys = leavesOf(shownOf([sheet([skin(1, 0, 0), skin(2, 150, 0)]), sheet([skin(3, 0, 0)])])).map(
    ({ key }) => key,
  );
  expect(new Set(keys).size).toBe(keys.length);
});

describe('in a terminal', () => {
  const one = shownOf([sheet([skin(1, 0, 0), skin(2, 150, 0)])]);
  const unsure = shownOf([sheet([skin(1, 0, 0)])], { bound: { of: 'cost', value: exact(3) } });
  const linesOf = (...cutting: readonly ShownCutting[]) => cuttingLines(cutting, 80).map(plain);

  it('each way to cut is a row: from how many sheets, what one of them holds, and what is left', () => {
    expect(linesOf(one)).toEqual([
      'Felt, 3 mm: 83 % used',
      '  1 sheet of 450 mm × 300 mm  2 × Skin, 150 mm × 100 mm; 450 mm × 200 mm left',
      '                              whole',
      'No cutting plan costs less.',
    ]);
  });

  it('that nothing is less is said once, of those of which it is proven', () => {
    const lines = linesOf(one, unsure);
    expect(lines.filter((line) => line.includes('83 % used.'))).toEqual([
      'Felt, 3 mm: 83 % used. A cutting plan that costs up to £1.00 less may exist.',
    ]);
    expect(lines.at(-1)).toBe('The others: no cutting plan costs less.');
    expect(linesOf(unsure).join(' ')).not.toContain('No cutting plan');
  });
});

describe('what is left of a sheet', () => {
  const leftWith = (leftPieces: readonly Holding[] | undefined): string => {
    const layouts = [sheet([skin(1, 0, 0)])];
    const plan = planOf(4, { cutting: [cuttingOf(layouts)], purchases: [purchaseOf(leftPieces)] });
    return plain(showCutting('cutting[0]', plan.cutting[0]!, plan, bench).layouts[0]!.left.text);
  };
  const mm = (value: number) => ({ value: String(value), unit: 'mm' });

  it('is said where the shopping list has it as left over', () => {
    expect(leftWith([{ count: 1, each: { sides: [mm(450), mm(200)] } }])).toBe('450 mm × 200 mm left whole');
  });

  it('is not said of scrap, from which no piece could be cut', () => {
    expect(leftWith([])).toBe('');
  });
});

it('a sheet that is used to its end has nothing left', () => {
  const full = sheet([skin(1, 0, 0)], { length: exact(100), used: exact(100) });
  expect(shownOf([full]).layouts[0]!.left.text).toBe('');
  expect(shownOf([full]).layouts[0]!.drawing.left).toBeUndefined();
});
