import { describe, expect, it } from 'vitest';
import type { Material, Pack } from '../../../src/core/model/material.ts';
import type { Program } from '../../../src/core/model/program.ts';
import { exact, exactText } from '../../../src/core/quantity/exact.ts';
import { roundMoney } from '../../../src/core/money/money.ts';
import { aGuide, aMaterial, aRow, aWorkspace, money, pack, planOf, said } from './a-workspace.ts';

function planned(content: {
  rows: readonly [use: string, amount: string][];
  materials: readonly Material[];
  program?: Partial<Program>;
  wanted?: number;
  stock?: Record<string, { value: string; unit: string }>;
}) {
  const guide = aGuide('x', { materials: content.rows.map(([use, text]) => aRow(use, text)) });
  const workspace = aWorkspace({
    program: content.program ?? {},
    materials: content.materials,
    guides: [guide],
  });
  const settings = content.stock ? { stock: content.stock } : {};
  return planOf(workspace, [{ guide: 'x', wanted: content.wanted ?? 1 }], settings);
}

const felt = (...packs: Pack[]) => aMaterial('felt', { packs });

describe('what is bought', () => {
  // Trade knowledge, section 1.2 [C] (computed independently there): 250 g per model, a pack of 1000 g at 18.00. C1 (used) is 4.50 always; C2 (outlay each) is a
  // saw-tooth, not monotone. Values in whole pence.
  it.each([
    [1, '18.00'],
    [3, '6.00'],
    [4, '4.50'],
    [5, '7.20'],
    [8, '4.50'],
    [9, '6.00'],
    [10, '5.40'],
    [12, '4.50'],
    [13, '5.54'],
  ])(
    'trade 1.2 [C]: %i models of 250 g each, packs of 1000 g at 18.00: used 4.50, outlay %s each',
    (wanted, outlay) => {
      const plan = planned({
        rows: [['felt', '250 g']],
        materials: [felt(pack('1000 g', '18.00 GBP'))],
        wanted,
      });
      const [each] = plan.cost.each;
      expect(exactText(each!.used)).toBe('4.5');
      expect(roundMoney(each!.outlay, 2, 'half-up')).toBe(outlay);
    },
  );

  it('trade 1.2 [C]: with 2.5 h of labour at 20.00/h, the outlay of 10 models is 10.40 each', () => {
    // 5.40 + 2.5 x 20 / 10. Here: withLabour - used + outlay, since labour is added to what is used.
    const plan = planned({
      rows: [['felt', '250 g']],
      materials: [felt(pack('1000 g', '18.00 GBP'))],
      program: { labour: money('30 GBP') }, // 10 models x 10 min = 100 min at 30/h = 2.5 h at 20/h
      wanted: 10,
    });
    const { outlay, withLabour, withTools } = plan.cost.each[0]!;
    expect(exactText(outlay.add(withLabour.sub(withTools)))).toBe('10.4');
  });

  it('is a whole extra pack when the last one is a gram short', () => {
    const plan = planned({ rows: [['felt', '501 g']], materials: [felt(pack('500 g', '6.40 GBP'))] });
    expect(plan.purchases[0]!.packs).toEqual([{ pack: 0, count: 2 }]);
    expect(said(plan.purchases[0]!.left)).toBe('499 g');
  });

  it('is less by what is in stock, and what is left over counts the stock', () => {
    const stocked = (value: string) =>
      planned({
        rows: [['felt', '600 g']],
        materials: [felt(pack('500 g', '6.40 GBP'))],
        stock: { felt: { value, unit: 'kg' } },
      }).purchases[0]!;
    expect([stocked('1/10').packs, said(stocked('1/10').fromStock), said(stocked('1/10').left)]).toEqual([
      [{ pack: 0, count: 1 }],
      '100 g',
      '0 g',
    ]);
    expect([stocked('1').packs, said(stocked('1').fromStock), said(stocked('1').left)]).toEqual([
      [],
      '600 g',
      '400 g',
    ]);
    expect(exactText(stocked('1').cost!)).toBe('0');
  });

  it('is summed over guides before it is rounded to packs, and its outlay shared by what each uses', () => {
    // 300 g + 200 g = one pack of 500 g at 6.40, where each alone would buy one: 3.84 and 2.56
    const guide = (id: string, text: string) => aGuide(id, { materials: [aRow('felt', text)] });
    const workspace = aWorkspace({
      materials: [felt(pack('500 g', '6.40 GBP'))],
      guides: [guide('a', '300 g'), guide('b', '200 g')],
    });
    const plan = planOf(workspace, [
      { guide: 'a', wanted: 1 },
      { guide: 'b', wanted: 1 },
    ]);
    expect(plan.requirements.map(({ amount, by }) => [said(amount), by.length])).toEqual([['500 g', 2]]);
    expect(plan.purchases[0]!.packs).toEqual([{ pack: 0, count: 1 }]);
    expect(plan.cost.each.map(({ outlay }) => exactText(outlay))).toEqual(['3.84', '2.56']);
  });

  it('shares an odd penny by largest remainder, so that the shares add up', () => {
    const guide = (id: string) => aGuide(id, { materials: [aRow('felt', '100 g')] });
    const workspace = aWorkspace({
      materials: [felt(pack('500 g', '10.00 GBP'))],
      guides: [guide('a'), guide('b'), guide('c')],
    });
    const plan = planOf(
      workspace,
      ['a', 'b', 'c'].map((id) => ({ guide: id, wanted: 1 })),
    );
    expect(plan.cost.each.map(({ outlay }) => exactText(outlay))).toEqual(['3.34', '3.33', '3.33']);
  });

  it('crosses from volume to mass by the measured density and nothing else', () => {
    // 100 mL x 0.6 g/mL = 60 g
    const powder = aMaterial('powder', {
      packs: [pack('50 g', '1 GBP')],
      density: { gramsPerMillilitre: '3/5' },
    });
    const plan = planned({ rows: [['powder', '100 mL']], materials: [powder] });
    expect(said(plan.requirements[0]!.amount)).toBe('60 g');
    expect(plan.purchases[0]!.packs).toEqual([{ pack: 0, count: 2 }]);
    expect(() =>
      planned({
        rows: [['powder', '100 mL']],
        materials: [{ ...powder, density: undefined } as unknown as Material],
      }),
    ).toThrow();
  });

  it('costs the usual pack and buys the cheapest ones', () => {
    // used: 400 g at the first pack's 1.00 per 100 g; bought: 1 x 500 g at 3.00 beats 4 x 1.00
    const plan = planned({
      rows: [['felt', '400 g']],
      materials: [felt(pack('100 g', '1 GBP'), pack('500 g', '3 GBP'))],
    });
    expect(exactText(plan.cost.each[0]!.used)).toBe('4');
    expect(plan.purchases[0]!.packs).toEqual([{ pack: 1, count: 1 }]);
  });

  it('takes tap water for nothing, and no pack of it', () => {
    const plan = planned({ rows: [['water', '3 L']], materials: [aMaterial('water', { free: true })] });
    expect(plan.purchases[0]).toMatchObject({ packs: [] });
    expect([exactText(plan.purchases[0]!.cost!), plan.cost.complete, said(plan.purchases[0]!.left)]).toEqual([
      '0',
      true,
      '0 L',
    ]);
  });

  it('has no cost where no price is known, and every sum is then "at least"', () => {
    const plan = planned({
      rows: [
        ['felt', '600 g'],
        ['tape', '1 m'],
      ],
      materials: [felt(pack('500 g')), aMaterial('tape', { packs: [pack('10 m', '2 GBP')] })],
    });
    expect(plan.purchases[0]!.packs).toEqual([{ pack: 0, count: 2 }]);
    expect('cost' in plan.purchases[0]!).toBe(false);
    expect([plan.cost.complete, exactText(plan.cost.outlay)]).toEqual([false, '2']);
    expect(plan.warnings.map(({ code, facts }) => [code, facts['material']])).toContainEqual([
      'price-missing',
      'felt',
    ]);
  });

  it('has nothing to buy where nothing is for sale, and says so', () => {
    const plan = planned({ rows: [['felt', '600 g']], materials: [felt()] });
    expect([plan.purchases[0]!.packs, plan.cost.complete]).toEqual([[], false]);
  });

  it('turns another currency by the dated rate, and without one counts the price as missing', () => {
    const dollars = felt(pack('500 g', '10 USD'));
    const exchange = { USD: { rate: '79/100', on: '2026-10-01' } };
    expect(
      exactText(
        planned({ rows: [['felt', '1 g']], materials: [dollars], program: { exchange } }).cost.outlay,
      ),
    ).toBe('7.9');
    expect(planned({ rows: [['felt', '1 g']], materials: [dollars] }).cost.complete).toBe(false);
  });
});

describe('suppliers', () => {
  const two = {
    near: { name: 'near', delivery: money('5 GBP') },
    far: { name: 'far', delivery: money('5 GBP') },
  };

  it('are chosen together with what they charge for delivery', () => {
    // felt 4.00 at near; tape 1.00 at near or 0.80 at far: far alone is cheaper for tape, but its delivery is not
    const materials = [
      aMaterial('felt', { packs: [pack('1 m', '4 GBP', { from: 'near' })] }),
      aMaterial('tape', {
        packs: [pack('1 m', '0.80 GBP', { from: 'far' }), pack('1 m', '1 GBP', { from: 'near' })],
      }),
    ];
    const plan = planned({
      rows: [
        ['felt', '1 m'],
        ['tape', '1 m'],
      ],
      materials,
      program: { suppliers: two },
    });
    expect(plan.purchases[1]!.packs).toEqual([{ pack: 1, count: 1 }]);
    expect(
      plan.deliveries.map(({ supplier, goods, charge }) => [supplier, exactText(goods), exactText(charge)]),
    ).toEqual([['near', '5', '5']]);
    expect(exactText(plan.cost.outlay)).toBe('10');
  });

  it('bring for nothing from their limit on, the limit included', () => {
    const suppliers = { near: { name: 'near', delivery: money('5 GBP'), freeOver: money('8 GBP') } };
    const material = aMaterial('felt', { packs: [pack('1 m', '4 GBP', { from: 'near' })] });
    const outlay = (text: string) =>
      exactText(
        planned({ rows: [['felt', text]], materials: [material], program: { suppliers } }).cost.outlay,
      );
    expect([outlay('1 m'), outlay('2 m'), outlay('3 m')]).toEqual(['9', '8', '12']);
  });

  it('are never chosen for more than another set would cost', () => {
    // every set of three suppliers by hand as an oracle
    const suppliers = {
      a: { name: 'a', delivery: money('3 GBP') },
      b: { name: 'b', delivery: money('2 GBP'), freeOver: money('6 GBP') },
      c: { name: 'c' },
    };
    const at = (price: string, from: string) => pack('1 m', `${price} GBP`, { from });
    const materials = [
      aMaterial('x', { packs: [at('1', 'a'), at('3', 'b'), at('9', 'c')] }),
      aMaterial('y', { packs: [at('1', 'a'), at('3', 'b')] }),
      aMaterial('z', { packs: [at('4', 'b'), at('5', 'c')] }),
    ];
    // all b: 3 + 3 + 4 = 10, free; a and c: 1 + 1 + 3 + 5 = 10, two suppliers, one of whom charges: a tie by price,
    // where sets with fewer that charge come first: {a} with c is as small as {b}, and a is listed first
    const plan = planned({
      rows: [
        ['x', '1 m'],
        ['y', '1 m'],
        ['z', '1 m'],
      ],
      materials,
      program: { suppliers },
    });
    expect(exactText(plan.cost.outlay)).toBe('10');
    expect(plan.deliveries.map(({ supplier }) => supplier)).toEqual(['a', 'c']);
  });

  it('point out what little is missing for free delivery', () => {
    const suppliers = { near: { name: 'the near shop', delivery: money('5 GBP'), freeOver: money('8 GBP') } };
    const material = aMaterial('felt', { packs: [pack('1 m', '4 GBP', { from: 'near' })] });
    const plan = planned({ rows: [['felt', '1 m']], materials: [material], program: { suppliers } });
    expect(plan.warnings).toContainEqual({
      code: 'free-delivery-near',
      severity: 'warning',
      places: [],
      facts: { supplier: 'the near shop', missing: '4.00 GBP', charge: '5.00 GBP' },
    });
  });
});

it('a share that does not end is exact', () => {
  const plan = planned({ rows: [['felt', '1 m']], materials: [felt(pack('1 m', '10.30 GBP'))], wanted: 3 });
  expect(plan.cost.each[0]!.outlay.equals(exact('103/10'))).toBe(true);
});

describe('a can of 400 mL that does 30 models', () => {
  const bought = (wanted: number, stock?: string) => {
    const guide = aGuide('x', { materials: [aRow('spray', '400 mL', { does: 30 })] });
    const materials = [aMaterial('spray', { packs: [pack('400 mL', '5 GBP')] })];
    const settings = stock ? { stock: { spray: { value: stock, unit: 'mL' } } } : {};
    const [spray] = planOf(
      aWorkspace({ materials, guides: [guide] }),
      [{ guide: 'x', wanted }],
      settings,
    ).purchases;
    const { needed, fromStock, packs, left } = spray!;
    return [said(needed), said(fromStock), packs.reduce((sum, { count }) => sum + count, 0), said(left)];
  };

  it('is bought whole, and what is not used is left for the next batch', () => {
    expect(bought(12)).toEqual(['160 mL', '0 mL', 1, '240 mL']);
    expect(bought(12, '240')).toEqual(['160 mL', '160 mL', 0, '80 mL']);
  });

  it('is bought again when what is left of it is not enough', () => {
    expect(bought(12, '80')).toEqual(['160 mL', '80 mL', 1, '320 mL']);
    expect(bought(31)).toEqual(['1240/3 mL', '0 mL', 2, '1160/3 mL']);
  });
});
