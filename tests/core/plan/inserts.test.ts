import { describe, expect, it } from 'vitest';
import type { PlannedSchedule } from '../../../src/core/plan/result.ts';
import { exactText } from '../../../src/core/quantity/exact.ts';
import {
  aGuide,
  aMaterial,
  aRow,
  aStep,
  aWorkspace,
  inOrder,
  money,
  pack,
  planOf,
  said,
  time,
} from './a-workspace.ts';

/** A block with two inserts in it: the insert is a guide of its own, of which one in ten fails. */
const insert = aGuide('vessel-insert', {
  materials: [aRow('tube', '100 mm')],
  steps: [aStep('cut', '2 min', '0 min', { wait: { usual: time('30 min'), ifRoom: {} } })],
  yields: '9/10',
});
const block = aGuide('block', {
  lasts: '5',
  materials: [aRow('foam', '1'), aRow('guide:vessel-insert', '2')],
  steps: inOrder(
    aStep('carve', '5 min', '0 min', { uses: [{ material: 'foam' }] }),
    aStep('set-in', '3 min', '0 min', { uses: [{ material: 'guide:vessel-insert' }] }),
  ),
});
const room = aWorkspace({
  program: { labour: money('60 GBP') },
  materials: [
    aMaterial('tube', { packs: [pack('1 m', '3 GBP')] }),
    aMaterial('foam', { form: 'count', packs: [pack('1', '2 GBP')] }),
  ],
  guides: [block, insert],
});

describe('a model that goes into another', () => {
  // 9 blocks: 18 good inserts, ceil(18 / 0.9) = 20 made; 20 x 100 mm = 2 m of tube
  const plan = planOf(room, [{ guide: 'block', wanted: 9 }]);

  it('is a line of the same plan', () => {
    expect(plan.lines.map(({ guide, wanted, forOthers, made }) => [guide, wanted, forOthers, made])).toEqual([
      ['block', 9, undefined, 9],
      ['vessel-insert', 18, 18, 20],
    ]);
    expect(plan.requirements.map(({ material, amount }) => [material, said(amount)])).toEqual([
      ['foam', '9'],
      ['tube', '2 m'],
    ]);
  });

  it('counts into the cost of the one it goes into', () => {
    // insert: 20 x 0.1 m x 3.00 = 6.00 for 18 good: 1/3 each; block: 2.00 + 2 x 1/3 = 8/3; per use (8/3) / 5
    // hands-on: inserts 20 x 2 = 40 min, blocks 9 x 8 = 72 min, at 1.00 a minute: block (72 + 40) / 9 = 112/9
    const [whole, part] = plan.cost.each;
    expect([part!.used, whole!.used, whole!.perUse!].map(exactText)).toEqual(['1/3', '8/3', '8/15']);
    expect(exactText(whole!.withLabour.sub(whole!.withTools))).toBe('112/9');
    expect([plan.cost.handsOn, whole!.handsOn, part!.handsOn]).toEqual([112, 72, 40]);
  });

  it('is ready before the run that uses it', () => {
    const { jobs } = plan.schedule as PlannedSchedule;
    const ready = jobs.filter(({ step }) => step === 'cut').map(({ run, waitEnd }) => ({ run, waitEnd }));
    for (const { run, start } of jobs.filter(({ step }) => step === 'set-in')) {
      // good ones 2n - 1 and 2n are, if failures are spread, among the first ceil(2n / 0.9) made
      const needed = Math.ceil((2 * run) / 0.9);
      const last = ready.filter((job) => job.run === needed || job.run === Math.ceil((2 * run - 1) / 0.9));
      for (const { waitEnd } of last) expect(waitEnd).toBeLessThanOrEqual(start);
    }
  });

  it('joins the ones that are asked for themselves', () => {
    const both = planOf(
      room,
      [
        { guide: 'vessel-insert', wanted: 4 },
        { guide: 'block', wanted: 2 },
      ],
      { spares: '1/10' },
    );
    // blocks 2 + 1 spare: 6 inserts; 4 for themselves and 1 spare: ceil(10 / 0.9) + 1 = 13
    expect(
      both.lines.map(({ guide, wanted, forOthers, spares, made }) => [
        guide,
        wanted,
        forOthers,
        spares,
        made,
      ]),
    ).toEqual([
      ['vessel-insert', 10, 6, 1, 13],
      ['block', 2, undefined, 1, 3],
    ]);
  });
});
