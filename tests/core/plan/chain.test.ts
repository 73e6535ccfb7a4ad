import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../src/core/model/guide.ts';
import type { Program } from '../../../src/core/model/program.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import type { PlannedSchedule } from '../../../src/core/plan/result.ts';
import {
  aGuide,
  aMaterial,
  aRow,
  aStep,
  aToolRow,
  aWorkspace,
  inOrder,
  pack,
  planOf,
  time,
} from './a-workspace.ts';

const wait = (text: string) => ({ wait: { usual: time(text), ifRoom: {} } });
const block = inOrder(aStep('pour', '10 min', '0 min', wait('12 h')), aStep('unmould', '5 min'));
const tin = aToolRow('tin', { held: { from: 'pour', to: 'unmould' } });
const glue = aMaterial('glue', { packs: [pack('1 L', '5 GBP', { arrivesIn: time('3 working days') })] });
const solvent = aMaterial('solvent', { hazards: ['H225'] });

function scheduled(
  guide: Partial<Guide>,
  wanted: number,
  program: Partial<Program> = {},
  settings: Partial<PlanSettings> = {},
): PlannedSchedule {
  const workspace = aWorkspace({ program, materials: [glue, solvent], guides: [aGuide('x', guide)] });
  const { schedule } = planOf(workspace, [{ guide: 'x', wanted }], settings);
  if ('none' in schedule) throw new Error(JSON.stringify(schedule));
  return schedule;
}
const told = ({ chain, jobs }: PlannedSchedule): string[] =>
  chain.map(({ job, because, id }) => [jobs[job]!.step, because, ...(id ? [id] : [])].join(' '));

describe('what decides when all is ready', () => {
  it('is the builder who does one thing after the other', () => {
    const steps = [aStep('cut', '10 min')];
    expect(told(scheduled({ steps }, 3, { builders: 1 }))).toEqual([
      'cut start',
      'cut builders',
      'cut builders',
    ]);
  });

  it('is the step before with its wait, and the night', () => {
    const steps = inOrder(aStep('glue', '10 min', '0 min', wait('2 h')), aStep('trim', '5 min'));
    expect(told(scheduled({ steps }, 1))).toEqual(['glue start', 'trim step']);
    expect(told(scheduled({ steps: block }, 1))).toEqual(['pour start', 'unmould hours']);
  });

  it('is the tin that the last one is in', () => {
    // one tin: poured on Monday, unmoulded on Tuesday, the second poured at once and unmoulded on Wednesday
    expect(told(scheduled({ steps: block, tools: [tin] }, 2, { owned: { tin: 1 } }))).toEqual([
      'pour start',
      'unmould hours',
      'pour tool tin',
      'unmould hours',
    ]);
  });

  it('is the place, once for all', () => {
    const steps = [aStep('spray', '10 min', '0 min', { at: { booth: 1 } })];
    expect(told(scheduled({ steps }, 2, { stations: { booth: 1 } }))).toEqual([
      'spray start',
      'spray place booth',
    ]);
  });

  it('is the last wait too, which is told with its run', () => {
    const steps = [
      aStep('paint', '10 min', '0 min', { ...wait('30 min'), waitsAt: { rack: { count: 1, per: 'run' } } }),
    ];
    expect(told(scheduled({ steps }, 2, { stations: { rack: 1 } }))).toEqual([
      'paint start',
      'paint place rack',
    ]);
  });

  it('is what was ordered', () => {
    const guide = { steps: [aStep('glue', '10 min')], materials: [aRow('glue', '10 mL')] };
    expect(told(scheduled(guide, 1, {}, { start: '2026-11-26T10:00' }))).toEqual(['glue delivery']);
  });

  it('is a hold limit: what is mixed must not wait, so mixing waits for the sanding', () => {
    // sand until 60; pour until 70, at most 15 min after mixing, which so ends at 55 and begins at 45; then 2 h of curing
    const limit = { useWithin: { byStep: { pour: time('15 min') } } };
    const steps = [
      aStep('sand', '60 min'),
      aStep('mix', '10 min', '0 min', limit),
      aStep('pour', '10 min', '0 min', { after: ['sand', 'mix'] }),
      aStep('cure', '2 h', '0 min', { after: ['mix'] }),
    ];
    const plan = scheduled({ steps }, 1);
    expect(plan.makespan).toBe(55 + 120);
    expect(told(plan)).toEqual(['sand start', 'pour step', 'mix limit', 'cure step']);
  });

  it('is a flame, from which vapour is kept apart', () => {
    const steps = [
      aStep('spray', '10 min', '0 min', { clearsIn: time('30 min') }),
      aStep('torch', '5 min', '0 min', { ignition: true, uses: [], ...wait('15 min') }),
    ];
    const guide = { steps: steps.map((step) => ({ uses: [{ material: 'solvent' }], ...step })) };
    expect(told(scheduled({ ...guide, materials: [aRow('solvent', '5 mL')] }, 1))).toEqual([
      'torch start',
      'spray apart',
    ]);
  });

  it('is told from the first to the last where it runs backwards', () => {
    expect(told(scheduled({ steps: block }, 1, {}, { readyBy: '2026-11-30T10:00' }))).toEqual([
      'pour start',
      'unmould hours',
    ]);
    const steps = [aStep('cut', '10 min')];
    const plan = scheduled({ steps }, 3, { builders: 1 }, { readyBy: '2026-11-30T12:00' });
    expect(told(plan)).toEqual(['cut start', 'cut builders', 'cut builders']);
    expect(plan.chain).toEqual([
      { job: 0, because: 'start' },
      { job: 1, because: 'builders' },
      { job: 2, because: 'builders' },
    ]);
    // what is glued is ready two hours later: that decides when work begins, not what is cut at the end
    const last = [aStep('glue', '10 min', '0 min', wait('2 h')), aStep('cut', '10 min')];
    expect(told(scheduled({ steps: last }, 1, {}, { readyBy: '2026-11-30T12:00' }))).toEqual(['glue start']);
  });
});

describe('tins that are full when the plan begins', () => {
  const guide = { steps: block, tools: [tin] };
  const settings = { finished: [{ guide: 'x', models: 0, past: [{ step: 'pour', models: 2 }] }] };
  const program = { owned: { tin: 2 } };

  it.each<[string, number, Partial<PlanSettings>]>([
    ['forwards, one more', 3, {}],
    ['forwards, two more', 4, {}],
    ['backwards, one more', 3, { readyBy: '2026-11-30T17:00' }],
    ['backwards, two more', 4, { readyBy: '2026-11-30T17:00' }],
  ])('are emptied before they are filled again: %s', (_, wanted, more) => {
    const { jobs, loads } = scheduled(guide, wanted, program, { ...settings, ...more });
    const poured = jobs.filter(({ step }) => step === 'pour');
    const emptied = jobs.filter(({ step, models }) => step === 'unmould' && models[0]! <= 2);
    expect([poured.length, emptied.length]).toEqual([wanted - 2, 2]);
    for (const { start } of poured) {
      const before = emptied.filter(({ end }) => end <= start).length;
      const beside = poured.filter((other) => other.start < start).length;
      expect(before).toBeGreaterThan(beside);
    }
    expect(loads.find(({ id }) => id === 'tin')!.peak).toBe(2);
  });

  it('decide when all is ready where nothing is poured before', () => {
    // the only tin is full: emptied, filled again, and emptied the next day
    const finished = [{ guide: 'x', models: 0, past: [{ step: 'pour', models: 1 }] }];
    const plan = scheduled(guide, 2, { owned: { tin: 1 } }, { finished });
    expect(told(plan)).toEqual(['unmould start', 'pour tool tin', 'unmould hours']);
  });
});
