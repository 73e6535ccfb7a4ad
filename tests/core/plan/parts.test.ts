import { describe, expect, it } from 'vitest';
import { exactText } from '../../../src/core/quantity/exact.ts';
import {
  aGuide,
  aMaterial,
  aPiece,
  aRow,
  aStep,
  aWorkspace,
  inOrder,
  pack,
  planOf,
  said,
} from './a-workspace.ts';

/** A frame that lasts 500 uses, a skin that lasts 4; glue for both, screws for the assembly. */
const trainer = aGuide('trainer', {
  parts: [
    { id: 'frame', name: 'Frame', lasts: '500' },
    { id: 'skin', name: 'Skin', lasts: '4' },
  ],
  materials: [
    aRow('board', '1'),
    aRow('glue', '20 g'),
    aRow('felt', undefined, { pieces: [aPiece('top', '100 mm x 100 mm'), aPiece('tab', '100 mm x 50 mm')] }),
    aRow('screw', '4'),
  ],
  steps: inOrder(
    aStep('saw', '10 min', '0 min', {
      for: { per: 'part', part: 'frame' },
      uses: [{ material: 'board' }, { material: 'glue' }, { material: 'felt', pieces: ['tab'] }],
    }),
    aStep('cut-skin', '4 min', '0 min', {
      for: { per: 'part', part: 'skin' },
      uses: [{ material: 'felt', pieces: ['top'] }],
    }),
    aStep('glue-skin', '3 min', '0 min', {
      for: { per: 'part', part: 'skin' },
      uses: [{ material: 'glue', amount: { least: '5', usual: '5', most: '5', unit: 'g' } }],
    }),
    aStep('assemble', '2 min', '0 min', { uses: [{ material: 'screw' }] }),
  ),
});
const room = aWorkspace({
  materials: [
    aMaterial('board', { packs: [pack('1', '5 GBP')] }),
    aMaterial('glue', { packs: [pack('100 g', '2 GBP')] }),
    aMaterial('felt', { form: 'sheet', packs: [pack('100 mm x 100 mm', '1 GBP')] }),
    aMaterial('screw', { packs: [pack('100', '1 GBP')] }),
  ],
  guides: [trainer],
});

describe('a model of parts that wear differently', () => {
  it('costs per use what each part costs over its own life', () => {
    // frame: board 5.00 + glue 15 of 20 g 0.30 + tab half a sheet 0.50 = 5.80 / 500 = 0.0116
    // skin:  top 1.00 + glue 5 g 0.10 + screws of the assembly 0.04 (the skin wears first) = 1.14 / 4 = 0.285
    const plan = planOf(room, [{ guide: 'trainer', wanted: 3 }]);
    expect(exactText(plan.cost.each[0]!.used)).toBe('6.94');
    expect(exactText(plan.cost.each[0]!.perUse!)).toBe('0.2966');
  });

  it('has no cost per use where a part does not say how long it lasts', () => {
    const unsaid = { ...trainer, parts: [{ id: 'frame', name: 'Frame' }, trainer.parts[1]!] };
    const plan = planOf({ ...room, guides: { trainer: unsaid } }, [{ guide: 'trainer', wanted: 1 }]);
    expect('perUse' in plan.cost.each[0]!).toBe(false);
  });
});

describe('one part alone', () => {
  const plan = planOf(room, [{ guide: 'trainer', part: 'skin', wanted: 6 }]);
  const [line] = plan.lines;

  it('runs the steps for each of it, in their order, and takes what they use', () => {
    expect(line).toMatchObject({ guide: 'trainer', part: 'skin', made: 6 });
    expect(
      line!.steps.map(({ step, takes }) => [step, ...takes.map(({ use, total }) => `${use} ${said(total)}`)]),
    ).toEqual([
      ['cut-skin', 'felt 60000 mm²'],
      ['glue-skin', 'glue 30 g'],
    ]);
    expect(line!.at.steps.map(({ after }) => after)).toEqual([[], ['cut-skin']]);
    expect(line!.at.originOf.steps).toEqual([1, 2]);
    expect(line!.at.originOf.materials).toEqual([1, 2]);
  });

  it('costs what it takes, over its own life', () => {
    expect([plan.cost.each[0]!.used, plan.cost.each[0]!.perUse!].map(exactText)).toEqual(['1.1', '0.275']);
  });
});
