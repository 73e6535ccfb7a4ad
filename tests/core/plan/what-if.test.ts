import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Program } from '../../../src/core/model/program.ts';
import type { Workspace } from '../../../src/core/model/workspace.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import { makePlan } from '../../../src/core/plan/plan.ts';
import { whatIf } from '../../../src/core/plan/compare/what-if.ts';
import { withChange } from '../../../src/core/plan/compare/with-change.ts';
import { exactText } from '../../../src/core/quantity/exact.ts';
import { aGuide, aStep, aTool, aToolRow, aWorkspace, inOrder, money, planOf, time } from './a-workspace.ts';
import { anyWorkspace } from './any-workspace.ts';

const today = '2026-11-25';
const nineToFive: Program['work'] = { days: ['Mon', 'Tue', 'Wed', 'Thu'], hours: [[540, 1020]], closed: [] };

function asked(
  workspace: Workspace,
  wanted: number,
  settings: Partial<PlanSettings> = {},
): Parameters<typeof whatIf> {
  const all: PlanSettings = { today, ...settings };
  const demand = [{ guide: 'x', wanted }];
  return [workspace, demand, all, planOf(workspace, demand, all)];
}

/** Four pads of an hour each, in a press that half an hour of each is spent in. */
const pads = aWorkspace({
  program: { builders: 1, owned: { press: 1, knife: 4 }, work: nineToFive },
  tools: [aTool('press', { price: money('30 GBP') })],
  guides: [
    aGuide('x', {
      steps: inOrder(aStep('lay', '30 min'), aStep('press', '30 min')),
      tools: [aToolRow('press', { in: ['press'] }), aToolRow('knife', { in: ['lay'] })],
    }),
  ],
});

describe('what one more would bring', () => {
  it('is nothing where all models are finished', () => {
    const finished = [{ guide: 'x', models: 4, past: [] }];
    expect(whatIf(...asked(pads, 4, { finished }))).toEqual([]);
  });

  it('is told with its figures, what gains most first, and nothing that gains nothing', () => {
    // alone 4 h: ready at 13:00. Two builders: 09:30 first pressed, then one press every half hour: ready at 11:30.
    // A second press and one builder: no gain.
    const rows = whatIf(...asked(pads, 4));
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ change: { kind: 'builders', count: 2 }, ready: 690, firstHandsOn: 540 });
  });

  it('is told of a tool with its price, where that is what is scarce', () => {
    // two builders: 11:30 by one press; with two presses everything twice in parallel: 2 x 1 h each, ready at 11:00
    const rows = whatIf(...asked(pads, 4, { builders: 2 }));
    const press = rows.find(({ change }) => change.kind === 'tool')!;
    expect(press).toMatchObject({ change: { kind: 'tool', id: 'press', count: 2 }, ready: 660 });
    expect(exactText(press.cashToStart)).toBe('30');
    expect(exactText(press.outlay)).toBe('0');
  });

  it('is told all the same where nothing gains', () => {
    const one = aWorkspace({ guides: [aGuide('x')] });
    const [row] = whatIf(...asked(one, 1));
    expect(row).toMatchObject({ change: { kind: 'builders', count: 3 }, ready: 550, firstHandsOn: 540 });
  });

  it('of notice is a week, with dates only', () => {
    const [, , , plan] = asked(pads, 4, { start: '2026-12-07T09:00' });
    const rows = whatIf(...asked(pads, 4, { start: '2026-12-07T09:00' }));
    if ('none' in plan.schedule) throw new Error('no schedule');
    expect(rows[0]).toMatchObject({
      change: { kind: 'notice', minutes: 10_080 },
      ready: plan.schedule.ready - 10_080,
    });
    expect(whatIf(...asked(pads, 4)).some(({ change }) => change.kind === 'notice')).toBe(false);
  });

  it('is a later beginning in a plan backwards', () => {
    // ready by Tuesday 12:00: alone from Tuesday 09:00 only 3 h, so one hour on Monday; together from 09:30
    const settings = { readyBy: '2026-12-01T12:00' };
    const [, , , plan] = asked(pads, 4, settings);
    const [row] = whatIf(...asked(pads, 4, settings));
    if ('none' in plan.schedule) throw new Error('no schedule');
    expect(row!.change).toEqual({ kind: 'builders', count: 2 });
    expect(row!.firstHandsOn! - plan.schedule.firstHandsOn).toBe((9.5 - (17 - 24 - 1)) * 60);
  });

  it('is nothing without a schedule', () => {
    const lift = aWorkspace({
      guides: [aGuide('x', { steps: [aStep('lift', '5 min', '0 min', { people: 9 })] })],
    });
    expect(whatIf(...asked(lift, 1))).toEqual([]);
  });
});

/** Few schedules are tried, the same number everywhere. */
const quick = { today, effort: '1/200' };
const when = fc.constantFrom<Partial<PlanSettings>>(
  {},
  { start: '2026-12-07T10:20' },
  { readyBy: '2026-12-11T16:00' },
);

describe('for any workspace', () => {
  it('each row is the plan that is made with that change', { timeout: 120_000 }, () => {
    let told = 0;
    fc.assert(
      fc.property(anyWorkspace, when, (workspace, setting) => {
        const settings = { ...quick, ...setting };
        const demand = [{ guide: 'thing', wanted: 2 }];
        for (const row of whatIf(workspace, demand, settings, planOf(workspace, demand, settings))) {
          const changed = withChange({ workspace, demand, settings }, row.change);
          const { schedule, cost } = planOf(changed.workspace, changed.demand, changed.settings);
          const times = 'none' in schedule ? {} : { ready: schedule.ready, first: schedule.firstHandsOn };
          expect(times).toEqual(row.ready === undefined ? {} : { ready: row.ready, first: row.firstHandsOn });
          expect(cost.outlay.equals(row.outlay)).toBe(true);
          told++;
        }
      }),
      { numRuns: 12 },
    );
    expect(told).toBeGreaterThan(6);
  });

  it('whatever is said to help where there is no schedule has one', { timeout: 120_000 }, () => {
    const kinds = new Set<string>();
    const soon = fc.constantFrom<Partial<PlanSettings>>({}, {}, { readyBy: '2026-11-26T16:00' });
    fc.assert(
      fc.property(anyWorkspace, soon, (workspace, setting) => {
        const settings = { ...quick, ...setting };
        const demand = [{ guide: 'thing', wanted: 4 }];
        const { schedule } = planOf(workspace, demand, settings);
        if (!('none' in schedule)) return;
        expect(schedule.none.helps.length).toBeLessThanOrEqual(4);
        for (const { change } of schedule.none.helps) {
          const changed = withChange({ workspace, demand, settings }, change);
          const plan = makePlan(changed.workspace, changed.demand, changed.settings);
          expect('refused' in plan ? plan.refused : 'none' in plan.schedule).toBe(false);
          kinds.add(change.kind);
        }
      }),
      { numRuns: 40 },
    );
    expect([...kinds].sort()).toEqual(expect.arrayContaining(['fewer', 'later']));
  });
});

describe('fewer models', () => {
  it('is the most that can be made', () => {
    // five of an hour each in an afternoon of four: kept for 3 h, good until 17:00
    const keeps = [{ for: time('3 h'), at: 'room' }];
    const five = aWorkspace({ guides: [aGuide('x', { steps: [aStep('cut', '60 min')], keeps })] });
    const { schedule } = planOf(five, [{ guide: 'x', wanted: 5 }], {
      readyBy: '2026-11-30T17:00',
      builders: 1,
    });
    expect('none' in schedule && schedule.none.helps.at(-1)!.change).toEqual({
      kind: 'fewer',
      line: 0,
      wanted: 4,
    });
  });
});
