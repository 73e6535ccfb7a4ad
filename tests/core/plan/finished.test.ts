import { describe, expect, it } from 'vitest';
import type { Finished, PlanSettings } from '../../../src/core/plan/demand.ts';
import type { PlannedSchedule } from '../../../src/core/plan/result.ts';
import { exactText } from '../../../src/core/quantity/exact.ts';
import {
  aGuide,
  aMaterial,
  aMix,
  amount,
  aPiece,
  aRow,
  aStep,
  aTool,
  aToolRow,
  aWorkspace,
  inOrder,
  money,
  pack,
  planOf,
  said,
  time,
} from './a-workspace.ts';

/** Gel is melted for four at a time, poured into a tin each, and finished with tape. */
const block = aGuide('block', {
  lasts: '5',
  mixes: [aMix('gel', '1 L', [{ use: 'powder', amount: amount('100 g') }])],
  materials: [aRow('gel', '1 L'), aRow('tape', '150 mm')],
  tools: [aToolRow('tin', { held: { from: 'pour', to: 'unmould' } })],
  steps: inOrder(
    aStep('melt', '10 min', '0 min', { for: { per: 'every', models: 4 }, uses: [{ material: 'powder' }] }),
    aStep('pour', '5 min', '0 min', {
      uses: [{ material: 'gel' }],
      wait: { usual: time('60 min'), ifRoom: {} },
    }),
    aStep('unmould', '5 min', '0 min', { uses: [{ material: 'tape' }] }),
  ),
});
/** Two blocks in each. */
const stand = aGuide('stand', {
  materials: [aRow('wood', '1'), aRow('guide:block', '2')],
  steps: inOrder(
    aStep('saw', '5 min', '0 min', { uses: [{ material: 'wood' }] }),
    aStep('fit', '5 min', '0 min', { uses: [{ material: 'guide:block' }] }),
  ),
});
/** A skin of its own, glued to a frame. */
const frame = aGuide('frame', {
  parts: [
    { id: 'base', name: 'Base' },
    { id: 'skin', name: 'Skin', lasts: '2' },
  ],
  materials: [aRow('felt', undefined, { pieces: [aPiece('skin', '100 mm x 100 mm')] }), aRow('wood', '1')],
  steps: inOrder(
    aStep('cut', '5 min', '0 min', { for: { per: 'part', part: 'skin' }, uses: [{ material: 'felt' }] }),
    aStep('glue', '5 min', '0 min', { uses: [{ material: 'wood' }] }),
  ),
});
const room = aWorkspace({
  program: { owned: { tin: 4 }, builders: 1 },
  materials: [
    aMaterial('powder', { packs: [pack('100 g', '1 GBP')] }),
    aMaterial('tape', { form: 'length', packs: [pack('1 m', '1 GBP')] }),
    aMaterial('wood', { form: 'count', packs: [pack('1', '2 GBP')] }),
    aMaterial('felt', { form: 'sheet', packs: [pack('100 mm x 100 mm', '1 GBP')] }),
  ],
  guides: [block, stand, frame],
});

const models = (count: number, past: Finished['past'] = [], guide = 'block'): Finished => ({
  guide,
  models: count,
  past,
});

function blocks(wanted: number, finished: readonly Finished[], settings: Partial<PlanSettings> = {}) {
  const plan = planOf(room, [{ guide: 'block', wanted }], { finished, ...settings });
  const schedule = plan.schedule as PlannedSchedule;
  return {
    plan,
    line: plan.lines[0]!,
    needs: Object.fromEntries(plan.requirements.map(({ material, amount: of }) => [material, said(of)])),
    runs: (step: string) => schedule.jobs.filter((job) => job.step === step).map(({ models: of }) => of),
    schedule,
  };
}

describe('models that are finished', () => {
  it('are not made again', () => {
    // 8 wanted, 3 there: 5 made, 500 g and 750 mm
    const { line, needs, runs } = blocks(8, [models(3)]);
    expect(line).toMatchObject({ wanted: 8, spares: 0, finished: 3, made: 5 });
    expect(needs).toEqual({ powder: '500 g', tape: '0.75 m' });
    expect(runs('melt')).toEqual([[1, 2, 3, 4], [5]]);
  });

  it('count as wanted first, and spares are of all that are wanted', () => {
    const { line } = blocks(10, [models(10)], { spares: '1/10' });
    expect(line).toMatchObject({ wanted: 10, spares: 1, finished: 10, made: 1 });
  });

  it('leave what each costs to those that are made', () => {
    // 5 made of 0.1 kg each at 1.00 a pack of 100 g, and 0.15 m of tape at 1.00 a metre
    const { plan } = blocks(8, [models(3)]);
    expect(exactText(plan.cost.each[0]!.used)).toBe('1.15');
  });

  it('leave nothing to make, buy or do where all are there', () => {
    const { plan, line, needs, schedule } = blocks(4, [models(6)]);
    expect(line).toMatchObject({ wanted: 4, finished: 4, made: 0 });
    expect(line.steps.map(({ runs }) => runs)).toEqual([[], [], []]);
    expect(needs).toEqual({ powder: '0 g', tape: '0 m' });
    expect(plan.purchases.every(({ packs }) => packs.length === 0)).toBe(true);
    expect(schedule).toMatchObject({ jobs: [], makespan: 0, handsOn: 0 });
    expect(schedule.lines[0]!.models).toEqual([]);
    const { used, outlay, withTools, withLabour, perUse } = plan.cost.each[0]!;
    expect([used, outlay, withTools, withLabour, perUse!].map(exactText)).toEqual(['0', '0', '0', '0', '0']);
    expect(exactText(plan.cost.cashToStart)).toBe('0');
  });

  it('are told apart by level and part, and others are left aside', () => {
    const { line } = blocks(2, [models(1, [], 'stand'), { ...models(1), part: 'skin' }]);
    expect(line.made).toBe(2);
  });

  it('go into other models first', () => {
    // 3 stands take 6 blocks, 4 are there: 2 made; the stand that needs blocks 5 and 6 waits for those, no other
    const plan = planOf(room, [{ guide: 'stand', wanted: 3 }], { finished: [models(4)] });
    expect(plan.lines[1]).toMatchObject({ guide: 'block', wanted: 6, forOthers: 6, finished: 4, made: 2 });
    const { jobs } = plan.schedule as PlannedSchedule;
    const made = Math.max(...jobs.filter(({ step }) => step === 'unmould').map(({ end }) => end));
    const fits = jobs.filter(({ step }) => step === 'fit').map(({ start }) => start);
    expect(fits.filter((start) => start >= made)).toHaveLength(1);
    // the stand: 2.00 of wood; of the 2 blocks made 1.15 each, shared by 3 stands
    expect(exactText(plan.cost.each[0]!.used)).toBe(exactText(plan.cost.each[1]!.used.mul(2).div(3).add(2)));
  });

  it('leave out guides that nothing needs any more', () => {
    const plan = planOf(room, [{ guide: 'stand', wanted: 3 }], { finished: [models(3, [], 'stand')] });
    expect(plan.lines.map(({ guide, made }) => [guide, made])).toEqual([['stand', 0]]);
  });
});

describe('models that have come some way', () => {
  it('need nothing more of the steps that they are past, nor of those that lead there', () => {
    // 8 to make, 4 past pouring: gel for 4; tape for all 8
    const { needs, runs, line, schedule } = blocks(8, [models(0, [{ step: 'pour', models: 4 }])]);
    expect(needs).toEqual({ powder: '400 g', tape: '1.2 m' });
    expect(runs('melt')).toEqual([[5, 6, 7, 8]]);
    expect(runs('pour')).toHaveLength(4);
    expect(runs('unmould')).toHaveLength(8);
    // 10 + 4 x 5 + 8 x 5
    expect(schedule.handsOn).toBe(70);
    expect(line.steps[0]!.takes.map(({ total }) => said(total))).toEqual(['400 g']);
  });

  it('count by whole runs', () => {
    // 3 of 8 past melting, which is done for 4 at a time: that run is not over
    const { needs, runs } = blocks(8, [models(0, [{ step: 'melt', models: 3 }])]);
    expect(needs['powder']).toBe('800 g');
    expect(runs('melt')).toHaveLength(2);
  });

  it('keep the tools that they are in', () => {
    // 4 tins hold 4 poured blocks: nothing is poured before one of them is unmoulded
    const { schedule } = blocks(8, [models(0, [{ step: 'pour', models: 4 }])]);
    const firstOut = Math.min(
      ...schedule.jobs.filter(({ step }) => step === 'unmould').map(({ end }) => end),
    );
    for (const { start } of schedule.jobs.filter(({ step }) => step === 'pour'))
      expect(start).toBeGreaterThanOrEqual(firstOut);
  });

  it('keep the places where they wait', () => {
    // two are on a shelf for two: the third is put there when the first has been taken away
    const steps = inOrder(
      aStep('pour', '5 min', '0 min', {
        wait: { usual: time('60 min'), ifRoom: {} },
        waitsAt: { shelf: { count: 1, per: 'model' } },
      }),
      aStep('unmould', '5 min'),
    );
    const workspace = aWorkspace({
      program: { stations: { shelf: 2 } },
      guides: [aGuide('block', { steps })],
    });
    const finished = [models(0, [{ step: 'pour', models: 2 }])];
    const { jobs } = planOf(workspace, [{ guide: 'block', wanted: 3 }], { finished })
      .schedule as PlannedSchedule;
    const taken = jobs.filter(({ step }) => step === 'unmould').map(({ start }) => start);
    const poured = jobs.filter(({ step }) => step === 'pour');
    expect(poured).toHaveLength(1);
    expect(poured[0]!.end).toBeGreaterThanOrEqual(Math.min(...taken));
  });

  it('may be parts: a finished skin is past the steps for it', () => {
    const plan = planOf(room, [{ guide: 'frame', wanted: 5 }], {
      finished: [{ guide: 'frame', part: 'skin', models: 2, past: [] }],
    });
    expect(plan.lines[0]).toMatchObject({ made: 5 });
    const { jobs } = plan.schedule as PlannedSchedule;
    const cut = jobs.filter(({ step }) => step === 'cut').map(({ models: of }) => of[0]!);
    expect(cut.sort()).toEqual([3, 4, 5]);
    expect(plan.lines[0]!.rows[0]!.pieces).toEqual([{ piece: 'skin', count: 3 }]);
    const alone = planOf(room, [{ guide: 'frame', part: 'skin', wanted: 5 }], {
      finished: [{ guide: 'frame', part: 'skin', models: 2, past: [] }],
    });
    expect(alone.lines[0]).toMatchObject({ part: 'skin', finished: 2, made: 3 });
  });
});

it('the hold of a tool that past runs began is worn already', () => {
  // a tin of 10.00 lasts ten holds; four blocks, of which two are in theirs: 2 x 1.00 for four
  const withTin = { ...room, tools: { tin: aTool('tin', { lasts: '10', price: money('10 GBP') }) } };
  const finished = [{ guide: 'block', models: 0, past: [{ step: 'pour', models: 2 }] }];
  const { used, withTools } = planOf(withTin, [{ guide: 'block', wanted: 4 }], { finished }).cost.each[0]!;
  expect(exactText(withTools.sub(used))).toBe('0.5');
});
