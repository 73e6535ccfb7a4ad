import { describe, expect, it } from 'vitest';
import type { MaterialRow } from '../../../../src/core/model/guide.ts';
import { planAt } from '../../../../src/core/model/plan-at.ts';
import { arrivalsOf } from '../../../../src/core/plan/buy/arrivals.ts';
import { modelsFromStock } from '../../../../src/core/plan/buy/from-stock.ts';
import { lineOf } from '../../../../src/core/plan/demand/line.ts';
import { datedClock } from '../../../../src/core/plan/time/clock.ts';
import type { CuttingPlan, Purchase } from '../../../../src/core/plan/result.ts';
import { exact, zero } from '../../../../src/core/quantity/exact.ts';
import { dayNumber } from '../../../../src/core/time/day.ts';
import { aGuide, aMaterial, aRow, aWorkspace, pack, time } from '../a-workspace.ts';

const materials = ['gel', 'felt'].map((id) =>
  aMaterial(id, { packs: [pack('500 g', '4 GBP', { arrivesIn: time('2 d') })] }),
);

/** So many models of a guide with one such row. */
type Asked = readonly [wanted: number, row: MaterialRow];

/** Each of a guide of its own. */
function lines(...asked: readonly Asked[]) {
  const guides = asked.map(([, row], i) => aGuide(`guide-${i}`, { materials: [row] }));
  const workspace = aWorkspace({ materials, guides });
  const all = asked.map(([wanted], i) =>
    lineOf({ at: planAt(guides[i]!), wanted, forOthers: 0 }, workspace, zero, []),
  );
  return { workspace, all };
}

function fromStock(grams: string, ...asked: readonly Asked[]): readonly number[] {
  const { workspace, all } = lines(...asked);
  const stock = { value: exact(grams), unit: 'g' };
  const gel: Purchase = { material: 'gel', needed: stock, fromStock: stock, packs: [], left: stock };
  return modelsFromStock(gel, undefined, all, workspace);
}

describe('models that the stock is enough for', () => {
  it.each([
    ['0', 0],
    ['119.9', 0],
    ['120', 1],
    ['239.9', 1],
    ['240', 2],
    ['480', 4],
    ['9000', 4],
  ])('of four that take 120 g each, with %s g there are %i', (grams, models) => {
    expect(fromStock(grams, [4, aRow('gel', '120 g')])).toEqual([models]);
  });

  it('are counted line by line: what the first leave is for the next', () => {
    const asked: readonly Asked[] = [
      [2, aRow('gel', '120 g')],
      [3, aRow('gel', '50 g')],
    ];
    // 240 g for the first two, 110 g left: two of 50 g
    expect(fromStock('350', ...asked)).toEqual([2, 2]);
    // 120 g for one, 80 g left: one of 50 g
    expect(fromStock('200', ...asked)).toEqual([1, 1]);
  });

  it('are none of those that share what cannot be parted, unless all of it is there', () => {
    // one pot of 300 g for a batch, however many models it is for
    const pot: Asked = [3, aRow('gel', '300 g', { for: { per: 'batch' } })];
    expect([fromStock('299', pot), fromStock('300', pot)]).toEqual([[0], [3]]);
    // and where it is not, it takes nothing from the next line
    expect(fromStock('299', pot, [3, aRow('gel', '100 g')])).toEqual([0, 2]);
  });

  it('are all of a line that takes nothing of it', () => {
    expect(fromStock('10', [2, aRow('gel', '120 g')], [3, aRow('felt', '5 g')])).toEqual([0, 3]);
  });
});

describe('of what is cut', () => {
  const piece = (line: number, model?: number) => ({
    line,
    row: 0,
    piece: 'a',
    x: zero,
    y: zero,
    width: zero,
    height: zero,
    turned: false,
    ...(model ? { model } : {}),
  });
  const sheet = (pack: number | undefined, ...pieces: ReturnType<typeof piece>[]) => ({
    ...(pack === undefined ? {} : { pack }),
    width: zero,
    length: zero,
    used: zero,
    pieces,
  });
  const cut = (...layouts: CuttingPlan['layouts'][number][]): CuttingPlan => ({
    material: 'felt',
    by: 'sheets',
    layouts,
    bound: { of: 'sheets', value: zero },
    reached: zero,
    usedFraction: zero,
  });

  it('they are those before the first with a piece from a sheet that is bought', () => {
    const { workspace, all } = lines([4, aRow('felt', '1 g')], [3, aRow('felt', '1 g')]);
    const none = { value: zero, unit: 'g' };
    const felt: Purchase = { material: 'felt', needed: none, fromStock: none, packs: [], left: none };
    const served = (plan: CuttingPlan) => modelsFromStock(felt, plan, all, workspace);
    // of the first line the third model is the first on the new sheet; extra pieces are of no model
    const own = sheet(undefined, piece(0, 1), piece(0, 2), piece(0, 4), piece(1, 1));
    expect(served(cut(own, sheet(0, piece(0, 4), piece(0, 3), piece(0))))).toEqual([2, 3]);
    expect(served(cut(sheet(0, piece(1, 2), piece(1, 3))))).toEqual([4, 1]);
    expect(served(cut(own))).toEqual([4, 3]);
    // the same with its arrival, whatever else is cut
    const other = { ...cut(sheet(0, piece(0, 1), piece(1, 1))), material: 'gel' };
    const bought = { ...felt, packs: [{ pack: 0, count: 1 }] };
    const arrivals = arrivalsOf(
      { purchases: [bought], cutting: [other, cut(sheet(0, piece(1, 2)))], deliveries: [] },
      all,
      workspace,
      datedClock(workspace.program, dayNumber('2026-11-26') * 1440),
    );
    expect(arrivals.get('felt')?.modelsBefore).toEqual([4, 1]);
  });
});
