import { describe, expect, it } from 'vitest';
import type { PlanSettings } from '../../src/core/plan/demand.ts';
import { makePlan } from '../../src/core/plan/plan.ts';
import type { Plan } from '../../src/core/plan/result.ts';
import { planJson } from '../../src/exports/plan-json.ts';
import {
  aGuide,
  aPiece,
  aRow,
  aStep,
  aWorkspace,
  aMaterial,
  inOrder,
  pack,
} from '../core/plan/a-workspace.ts';
import { gelatinRoom } from '../core/plan/gelatin-block.ts';

function jsonOf(wanted: number, settings: Partial<PlanSettings> = {}, workspace = gelatinRoom) {
  const demand = [{ guide: Object.keys(workspace.guides)[0]!, wanted }];
  const plan = makePlan(workspace, demand, { today: '2026-11-25', ...settings });
  expect(plan).not.toHaveProperty('refused');
  // through text, as another program gets it
  return JSON.parse(JSON.stringify(planJson(plan as Plan, workspace))) as ReturnType<typeof planJson>;
}

describe('a plan as JSON', () => {
  it('says which format it is, and for whom it counts', () => {
    expect(jsonOf(4)).toMatchObject({
      format: 'benchwright-plan/1',
      demand: [{ guide: 'needle-block', wanted: 4, spares: 0, made: 4 }],
      cutting: [],
    });
    expect(jsonOf(4).demand[0]).not.toHaveProperty('level');
  });

  it('says what comes before the guide, and hands on the program’s policy as it is written', () => {
    const policy = { contact: 'the safety lead', link: 'https://example.org/policy' };
    const program = { ...gelatinRoom.program, policy };
    expect(jsonOf(4, {}, { ...gelatinRoom, program })).toMatchObject({
      defers: expect.stringContaining('Local policy first') as string,
      policy,
    });
    expect(jsonOf(4)).not.toHaveProperty('policy');
  });

  it('is exact: a decimal where that ends, else a fraction', () => {
    // 120 g × 4 × 1.05 / 0.95 = 10080/19 g; 0.18 m × 4 = 0.72 m
    const { requirements } = jsonOf(4);
    expect(requirements[0]).toEqual({ material: 'gelatin-powder', amount: '10080/19 g' });
    expect(requirements.find(({ material }) => material === 'tube')!.amount).toBe('0.72 m');
  });

  it('buys whole packs, with the price of each padded to its minor units', () => {
    // 2 × 500 g at 6.40; 1000 - 10080/19 = 8920/19 g are left
    expect(jsonOf(4).purchases[0]).toEqual({
      material: 'gelatin-powder',
      needed: '10080/19 g',
      fromStock: '0 g',
      packs: [{ supplier: 'craft-shop', holds: '500 g', count: 2, price: '6.40 GBP' }],
      cost: '12.80 GBP',
      left: '8920/19 g',
    });
  });

  it('takes what is at hand before it buys', () => {
    const [gelatin] = jsonOf(4, { stock: { 'gelatin-powder': { value: '1', unit: 'kg' } } }).purchases;
    // nothing to buy: 1000 - 10080/19 = 8920/19 g are left
    expect(gelatin).toMatchObject({
      fromStock: '10080/19 g',
      packs: [],
      cost: '0.00 GBP',
      left: '8920/19 g',
    });
  });

  it('counts minutes of the reference week where no date is set', () => {
    const { schedule, deliveries } = jsonOf(4);
    // Ready at 09:10 of the second day; begun at 16:10, so that the pot is poured by closing time.
    expect(schedule).toMatchObject({ start: 540, ready: 1990, makespan: 'PT17H', handsOn: 'PT50M' });
    expect(schedule).not.toHaveProperty('leadTime');
    expect(deliveries[0]).toEqual({ supplier: 'craft-shop', goods: '12.80 GBP', charge: '4.95 GBP' });
  });

  it('writes times by ISO 8601 with their offset where one is set', () => {
    // ordered Thursday afternoon, there at the opening of the third working day after
    const { schedule, deliveries } = jsonOf(4, { start: '2026-11-26T16:00' });
    expect(deliveries[0]).toMatchObject({
      ordered: '2026-11-26T16:00+00:00',
      arrives: '2026-12-01T09:00+00:00',
    });
    expect(schedule).toMatchObject({ start: '2026-11-26T16:00+00:00', ready: '2026-12-02T09:10+00:00' });
    expect(jsonOf(4, { start: '2026-07-01T09:00', today: '2026-06-30' }).schedule).toMatchObject({
      start: '2026-07-01T09:00+01:00',
    });
  });

  it('says of each run who does it, where, with what, for which models', () => {
    const { jobs } = jsonOf(4).schedule as { jobs: readonly Record<string, unknown>[] };
    expect(jobs[1]).toEqual({
      guide: 'needle-block',
      step: 'melt',
      run: 1,
      models: [1, 2, 3, 4],
      start: 980,
      end: 988,
      waitEnd: 1008,
      people: 1,
      builders: [1],
      places: { stove: 1 },
      tools: { stockpot: 1 },
    });
  });

  it('says when each model is ready, what decides that, and how busy everything is', () => {
    const { models, chain, loads } = jsonOf(4).schedule as unknown as Record<
      string,
      readonly Record<string, unknown>[]
    >;
    expect(models).toHaveLength(4);
    expect(models![3]).toMatchObject({ guide: 'needle-block', model: 4, ready: 1990 });
    expect(chain![0]).toMatchObject({ guide: 'needle-block', run: 1, because: 'start' });
    expect(loads![0]).toMatchObject({ kind: 'builders', has: 2 });
    expect(loads!.find(({ id }) => id === 'stove')).toMatchObject({ kind: 'place', has: 1, peak: 1 });
  });

  it('says by when all is to be ready where it was planned backwards', () => {
    const { schedule } = jsonOf(4, { readyBy: '2026-12-11T17:00', margin: 60 });
    expect(schedule).toMatchObject({ readyBy: '2026-12-11T16:00+00:00' });
  });

  it('says what is finished', () => {
    const finished = [{ guide: 'needle-block', models: 3, past: [] }];
    expect(jsonOf(4, { finished }).demand[0]).toMatchObject({ wanted: 4, finished: 3, made: 1 });
  });

  it('lays out what is cut: every sheet with its pieces, in mm, beside what no plan can beat', () => {
    const cover = aGuide('cover', {
      materials: [aRow('felt', undefined, { pieces: [aPiece('skin', '100 mm x 50 mm')] })],
    });
    const felt = aMaterial('felt', { form: 'sheet', packs: [pack('100 mm x 100 mm', '2 GBP')] });
    const { cutting, purchases } = jsonOf(3, {}, aWorkspace({ materials: [felt], guides: [cover] }));
    // 3 of half a sheet: 2 sheets; one piece lies at the bottom of each
    expect(cutting).toMatchObject([
      { material: 'felt', by: 'sheets', reached: { cost: '4.00 GBP' }, bound: { cost: '4.00 GBP' } },
    ]);
    expect(cutting[0]!.layouts).toHaveLength(2);
    expect(cutting[0]!.layouts[0]).toMatchObject({ pack: '100 mm x 100 mm', width: '100', length: '100' });
    expect(
      cutting[0]!.layouts
        .flatMap(({ pieces }) => pieces)
        .map(({ model }) => model)
        .sort(),
    ).toEqual([1, 2, 3]);
    expect(cutting[0]!.layouts[0]!.pieces[0]).toEqual({
      guide: 'cover',
      row: 'felt',
      piece: 'skin',
      model: 1,
      x: '0',
      y: '0',
      width: '100',
      height: '50',
      turned: false,
    });
    expect(purchases[0]!.left).toEqual(['100 mm x 50 mm']);
  });

  it('says why there is no schedule where there is none', () => {
    // Eight hours of one stretch do not fit into a day that closes for lunch.
    const long = aGuide('long', {
      materials: [aRow('felt', '1 g')],
      steps: inOrder(aStep('sew', '8 h', '0 min')),
    });
    const workspace = aWorkspace({ materials: [aMaterial('felt', { free: true })], guides: [long] });
    const { schedule } = jsonOf(1, {}, workspace);
    expect(schedule).toMatchObject({ none: 'schedule-impossible' });
  });

  it('is the same bytes for the same input', () => {
    expect(JSON.stringify(jsonOf(7))).toBe(JSON.stringify(jsonOf(7)));
  });
});
