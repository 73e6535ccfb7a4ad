import { describe, expect, it } from 'vitest';
import { outlayCurve } from '../../../src/core/plan/compare/curve.ts';
import type { CurvePoint } from '../../../src/core/plan/result.ts';
import { roundMoney } from '../../../src/core/money/money.ts';
import { aGuide, aMaterial, aPiece, aRow, aWorkspace, pack, planOf } from './a-workspace.ts';

const felt = aMaterial('felt', { packs: [pack('1000 g', '18.00 GBP')] });
const workspace = aWorkspace({
  materials: [felt],
  guides: [aGuide('x', { materials: [aRow('felt', '250 g')] })],
});
const today = { today: '2026-11-25' };
const at = (curve: readonly CurvePoint[], models: number) => {
  const { outlay, full } = curve.find((point) => point.models === models)!;
  return `${roundMoney(outlay, 2, 'half-up')}${full ? ' full' : ''}`;
};

describe('the outlay of one model by batch size', () => {
  // Trade knowledge, section 1.2 [C] (computed independently there): 250 g per model, a pack of 1000 g at 18.00: a
  // saw-tooth, not monotone. Whole pence.
  it.each([
    [1, '18.00'],
    [3, '6.00'],
    [4, '4.50 full'],
    [5, '7.20'],
    [8, '4.50 full'],
    [9, '6.00'],
    [10, '5.40'],
    [12, '4.50 full'],
    [13, '5.54'],
  ])('trade 1.2 [C]: %i models of 250 g, packs of 1000 g at 18.00: %s', (models, outlay) => {
    expect(at(outlayCurve(workspace, { guide: 'x', wanted: 12 }, today), models)).toBe(outlay);
  });

  it('goes from one model to twice the batch, and to 24 at least', () => {
    const sizes = (wanted: number) =>
      outlayCurve(workspace, { guide: 'x', wanted }, today).map(({ models }) => models);
    expect([sizes(1).at(-1), sizes(12).length, sizes(20).at(-1)]).toEqual([24, 24, 40]);
  });

  it('has 60 points at most, with the batch itself and with full packs among them', () => {
    const curve = outlayCurve(workspace, { guide: 'x', wanted: 501 }, today);
    const sizes = curve.map(({ models }) => models);
    expect(curve.length).toBeLessThanOrEqual(60);
    expect(sizes).toEqual([...new Set(sizes)].sort((a, b) => a - b));
    expect([sizes[0], sizes.includes(501), sizes.at(-1)]).toEqual([1, true, 1002]);
    // four models use up a pack: full ones are multiples of 4, and at least every second point is one
    const full = curve.filter((point) => point.full).map(({ models }) => models);
    expect(full.every((models) => models % 4 === 0)).toBe(true);
    expect(full.length).toBeGreaterThan(15);
  });

  it('counts spares, stock and what is cut, as the plan does', () => {
    const sheet = aMaterial('sheet', { form: 'sheet', packs: [pack('300 mm x 200 mm', '1.50 GBP')] });
    const guide = aGuide('x', {
      materials: [aRow('sheet', undefined, { pieces: [aPiece('skin', '150 mm x 100 mm')] })],
    });
    const cut = aWorkspace({ materials: [sheet], guides: [guide] });
    const settings = {
      ...today,
      spares: '1/10',
      stock: { sheet: { pieces: [pack('150 mm x 100 mm').holds] } },
    };
    for (const wanted of [1, 3, 4, 9]) {
      const { outlay } = planOf(cut, [{ guide: 'x', wanted }], settings).cost.each[0]!;
      const point = outlayCurve(cut, { guide: 'x', wanted }, settings).find(
        ({ models }) => models === wanted,
      )!;
      expect(point.outlay.equals(outlay)).toBe(true);
    }
  });
});
