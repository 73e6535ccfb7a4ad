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
    ['start-unreadable', [{ guide: 'suture-pad' }], { start: 'tomorrow' }],
    ['start-unreadable', [{ guide: 'suture-pad' }], { start: '2026-02-30T09:00' }],
    ['start-unreadable', [{ guide: 'suture-pad' }], { start: '2026-11-30T24:30' }],
    ['start-outside-zone', [{ guide: 'suture-pad' }], { start: '2031-01-01T09:00' }],
    ['start-outside-zone', [{ guide: 'suture-pad' }], { start: '2025-01-01T09:00' }],
  ])('%s', (code, demand, settings) => {
    expect(codes(demand, settings)).toEqual([code]);
  });

  it('for every reason at once', () => {
    expect(codes([{ guide: 'sponge' }, { guide: 'suture-pad', wanted: -1 }], { start: 'x' })).toEqual([
      'unknown-guide',
      'batch-out-of-range',
      'start-unreadable',
    ]);
  });

  it('with a sentence in the catalogue whose blanks the facts fill', () => {
    const all = [
      ...refusalsOf([
        { guide: 'needel-block' },
        { guide: 'needle-block', level: 'depp' },
        { guide: 'suture-pad', part: 'x' },
      ]),
      ...refusalsOf([{ guide: 'never-good', wanted: 10_000 }]),
      ...refusalsOf([{ guide: 'suture-pad', wanted: 0 }], { start: '2031-01-01T09:00', builders: 0 }),
    ];
    for (const { code, variant, facts } of all) {
      const words = problemWords[`${code}.${variant}`] ?? problemWords[code]!;
      const blanks = [...`${words.says} ${words.why ?? ''} ${words.write ?? ''}`.matchAll(/\{(\w+)\}/g)].map(
        ([, name]) => name!,
      );
      expect([code, blanks.filter((name) => !(name in facts))]).toEqual([code, []]);
    }
    expect(all).toHaveLength(7);
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
