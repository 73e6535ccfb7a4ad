import { describe, expect, it } from 'vitest';
import type { DemandLine, PlanSettings } from '../../../src/core/plan/demand.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import { problemWords } from '../../../src/words/diagnostics/index.ts';
import { aGuide, aRow, aStep, aWorkspace, inOrder, planOf } from './a-workspace.ts';

const level = (id: string) => ({ id, name: id, usual: false });
const workspace = aWorkspace({
  guides: [
    aGuide('needle-block', { levels: [level('shallow'), level('deep')] }),
    aGuide('suture-pad', { states: { for: 6, builders: 1 }, parts: [{ id: 'skin', name: 'Skin' }] }),
    aGuide('never-good', { yields: '1/1000' }),
    aGuide('egg', { materials: [aRow('guide:hen', '1')] }),
    aGuide('hen', { materials: [aRow('guide:egg', '1')] }),
  ],
});

function refusalsOf(demand: readonly DemandLine[], settings: Partial<PlanSettings> = {}) {
  const plan = makePlan(workspace, demand, { today: '2026-11-25', ...settings });
  return 'refused' in plan ? plan.refused : [];
}
const codes = (demand: readonly DemandLine[], settings?: Partial<PlanSettings>) =>
  refusalsOf(demand, settings).map(({ code, variant }) => (variant ? `${code}.${variant}` : code));

describe('a demand is refused', () => {
  it.each<[string, readonly DemandLine[], Partial<PlanSettings>]>([
    ['nothing-to-plan', [], {}],
    ['unknown-guide', [{ guide: 'sponge' }], {}],
    ['unknown-guide.near', [{ guide: 'needel-block' }], {}],
    ['unknown-guide', [{ guide: 'constructor' }], {}],
    ['unknown-level', [{ guide: 'needle-block', level: 'medium' }], {}],
    ['unknown-level.near', [{ guide: 'needle-block', level: 'depp' }], {}],
    ['unknown-level.none', [{ guide: 'suture-pad', level: 'deep' }], {}],
    ['unknown-part', [{ guide: 'suture-pad', part: 'frame' }], {}],
    ['unknown-part.none', [{ guide: 'needle-block', part: 'skin' }], {}],
    ['part-without-steps', [{ guide: 'suture-pad', part: 'skin' }], {}],
    ['batch-out-of-range', [{ guide: 'suture-pad', wanted: 0 }], {}],
    ['batch-out-of-range', [{ guide: 'suture-pad', wanted: 2.5 }], {}],
    ['batch-out-of-range', [{ guide: 'suture-pad', wanted: 10_001 }], {}],
    ['batch-out-of-range', [{ guide: 'suture-pad', wanted: NaN }], {}],
    [
      'batch-out-of-range',
      [
        { guide: 'suture-pad', wanted: 6_000 },
        { guide: 'suture-pad', wanted: 6_000 },
      ],
      {},
    ],
    ['too-many-made', [{ guide: 'never-good', wanted: 101 }], {}],
    ['guide-in-itself', [{ guide: 'egg', wanted: 1 }], {}],
    ['builders-out-of-range', [{ guide: 'suture-pad' }], { builders: 0 }],
    ['time-unreadable', [{ guide: 'suture-pad' }], { start: 'tomorrow' }],
    ['time-unreadable', [{ guide: 'suture-pad' }], { start: '2026-02-30T09:00' }],
    ['time-unreadable', [{ guide: 'suture-pad' }], { start: '2026-11-30T24:30' }],
    ['time-unreadable', [{ guide: 'suture-pad' }], { readyBy: '30 November' }],
    ['time-outside-zone', [{ guide: 'suture-pad' }], { start: '2031-01-01T09:00' }],
    ['time-outside-zone', [{ guide: 'suture-pad' }], { start: '2025-01-01T09:00' }],
    ['time-outside-zone', [{ guide: 'suture-pad' }], { readyBy: '2031-01-01T09:00' }],
    ['time-in-the-past', [{ guide: 'suture-pad' }], { start: '2026-11-24T17:00' }],
    ['time-in-the-past', [{ guide: 'suture-pad' }], { readyBy: '2026-11-24T17:00' }],
    ['time-skipped', [{ guide: 'suture-pad' }], { start: '2027-03-28T01:30' }],
    ['time-skipped', [{ guide: 'suture-pad' }], { readyBy: '2027-03-28T01:00' }],
    [
      'start-and-ready-by',
      [{ guide: 'suture-pad' }],
      { start: '2026-11-26T09:00', readyBy: '2026-11-30T09:00' },
    ],
    ['margin-out-of-range', [{ guide: 'suture-pad' }], { readyBy: '2026-11-30T09:00', margin: -60 }],
    ['margin-out-of-range', [{ guide: 'suture-pad' }], { readyBy: '2026-11-30T09:00', margin: 1.5 }],
    ['ready-by-missing.margin', [{ guide: 'suture-pad' }], { margin: 60 }],
    ['ready-by-missing.goodUntil', [{ guide: 'suture-pad' }], { goodUntil: '2026-11-30T17:00' }],
    [
      'good-until-too-early',
      [{ guide: 'suture-pad' }],
      { readyBy: '2026-11-30T09:00', goodUntil: '2026-11-30T08:59' },
    ],
    ['effort-out-of-range', [{ guide: 'suture-pad' }], { effort: '0' }],
    ['effort-out-of-range', [{ guide: 'suture-pad' }], { effort: '-1' }],
    ['effort-out-of-range', [{ guide: 'suture-pad' }], { effort: '1/0' }],
    ['effort-out-of-range', [{ guide: 'suture-pad' }], { effort: '2001/2' }],
  ])('%s', (code, demand, settings) => {
    expect(codes(demand, settings)).toEqual([code]);
  });

  it('for every reason at once', () => {
    expect(codes([{ guide: 'sponge' }, { guide: 'suture-pad', wanted: -1 }], { start: 'x' })).toEqual([
      'unknown-guide',
      'batch-out-of-range',
      'time-unreadable',
    ]);
  });

  it('for an hour that the clocks skip, saying which', () => {
    // London, 28 March 2027: the clocks go forward at 01:00 UTC, from 01:00 to 02:00
    const [skipped] = refusalsOf([{ guide: 'suture-pad' }], { start: '2027-03-28T01:30' });
    expect(skipped!.facts).toMatchObject({ time: '2027-03-28T01:30', from: '01:00', until: '02:00' });
    expect(codes([{ guide: 'suture-pad' }], { start: '2027-03-28T02:00' })).toEqual([]);
    expect(codes([{ guide: 'suture-pad' }], { start: '2027-03-28T00:59' })).toEqual([]);
  });

  it('with a sentence in the catalogue whose blanks the facts fill', () => {
    const one = [{ guide: 'suture-pad' }];
    const all = [
      ...refusalsOf([
        { guide: 'needel-block' },
        { guide: 'needle-block', level: 'depp' },
        { guide: 'suture-pad', part: 'x' },
      ]),
      ...refusalsOf([{ guide: 'never-good', wanted: 10_000 }]),
      ...refusalsOf([{ guide: 'suture-pad', wanted: 0 }], { start: '2031-01-01T09:00', builders: 0 }),
      ...refusalsOf(one, { start: '2027-03-28T01:30', effort: '0' }),
      ...refusalsOf(one, { start: '2026-11-24T17:00' }),
      ...refusalsOf(one, { readyBy: '2026-11-30T09:00', start: '2026-11-26T09:00', margin: -1 }),
      ...refusalsOf(one, { readyBy: '2026-11-30T09:00', goodUntil: '2026-11-30T08:00' }),
      ...refusalsOf(one, { goodUntil: '2026-11-30T08:00' }),
      ...refusalsOf(one, { margin: 3 }),
    ];
    for (const { code, variant, facts } of all) {
      const words = problemWords[`${code}.${variant}`] ?? problemWords[code]!;
      const blanks = [...`${words.says} ${words.why ?? ''} ${words.write ?? ''}`.matchAll(/\{(\w+)\}/g)].map(
        ([, name]) => name!,
      );
      expect([code, blanks.filter((name) => !(name in facts))]).toEqual([code, []]);
    }
    expect(all).toHaveLength(15);
  });
});

describe('a demand that leaves things out', () => {
  it('is for the published batch, else for one', () => {
    const wanted = (guide: string) => planOf(workspace, [{ guide }]).lines[0]!.wanted;
    expect([wanted('suture-pad'), wanted('needle-block')]).toEqual([6, 1]);
  });

  it('is for the usual level, and for no level where the guide has none', () => {
    expect(planOf(workspace, [{ guide: 'needle-block' }]).lines[0]!.level).toBe('shallow');
    expect('level' in planOf(workspace, [{ guide: 'suture-pad' }]).lines[0]!).toBe(false);
  });

  it('is one line where it names the same guide and level twice', () => {
    const plan = planOf(workspace, [
      { guide: 'needle-block', wanted: 2 },
      { guide: 'needle-block', level: 'deep', wanted: 1 },
      { guide: 'needle-block', level: 'shallow', wanted: 3 },
    ]);
    expect(plan.lines.map((line) => [line.level, line.wanted])).toEqual([
      ['shallow', 5],
      ['deep', 1],
    ]);
  });
});

describe('more is made than asked', () => {
  it('where runs are always full, and the plan says so', () => {
    const sheet = aStep('laminate', '5 min', '0 min', { for: { per: 'every', models: 6 }, partial: false });
    const full = aWorkspace({ guides: [aGuide('card', { steps: inOrder(sheet, aStep('cut', '1 min')) })] });
    const plan = planOf(full, [{ guide: 'card', wanted: 10 }]);
    expect(plan.lines[0]!.made).toBe(12);
    expect(plan.lines[0]!.steps[0]!.runs.map((run) => run.length)).toEqual([6, 6]);
    expect(plan.warnings).toMatchObject([
      { code: 'more-made', facts: { made: '12', good: '10', extra: '2' } },
    ]);
    expect(planOf(full, [{ guide: 'card', wanted: 12 }]).warnings).toEqual([]);
  });
});
