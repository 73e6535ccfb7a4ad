import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../../src/core/model/guide.ts';
import type { DemandLine, PlanSettings } from '../../../../src/core/plan/demand.ts';
import { windowsOf } from '../../../../src/core/plan/schedule/windows.ts';
import { aGuide, aMix, amount, aRow, aStep, inOrder, time } from '../a-workspace.ts';
import { aWorkload } from './a-workload.ts';

const wait = (text: string) => ({ wait: { usual: time(text), ifRoom: {} } });

describe('planned forwards, hands may be on', () => {
  /** From when on, for each run of a guide that begins at minute 0; `arrives`: when, and for how many models before. */
  function from(
    guide: Partial<Guide>,
    arrives: Readonly<Record<string, readonly [number, number]>>,
  ): number[] {
    const work = aWorkload(
      [aGuide('x', guide)],
      [{ guide: 'x', wanted: 3 }],
      {},
      { start: '2026-11-26T10:00' },
    );
    const { lines, runs, clock, workspace } = work;
    const arrivals = new Map(
      Object.entries(arrives).map(([use, [at, before]]) => [
        use,
        { at: clock.origin + at, modelsBefore: [before] },
      ]),
    );
    const windows = runs.map(windowsOf({ lines, program: workspace.program, clock, arrivals }));
    for (const window of windows) expect(window).toMatchObject({ until: Infinity, over: Infinity });
    return windows.map((window) => window.from);
  }
  const paste = aMix('paste', '1 L', [{ use: 'chalk', amount: amount('9 g') }, { use: 'chalk', amount: amount('9 g') }]); // prettier-ignore
  const gel = aMix('gel', '1 L', [{ use: 'water', amount: amount('900 mL') }, { use: 'powder', amount: amount('100 g') }]); // prettier-ignore
  const guide = {
    mixes: [paste, gel],
    materials: [aRow('gel', '1 L'), aRow('tape', '150 mm')],
    steps: inOrder(
      aStep('melt', '1 min', '0 min', { for: { per: 'every', models: 2 }, uses: [{ material: 'powder' }] }),
      aStep('tape', '1 min', '0 min', { uses: [{ material: 'tape' }] }),
    ),
  };

  it('when what the step uses is there, also where that goes into a mix', () => {
    expect(from(guide, {})).toEqual([0, 0, 0, 0, 0]);
    expect(from(guide, { tape: [70, 0] })).toEqual([0, 0, 70, 70, 70]);
    expect(from(guide, { powder: [90, 0] })).toEqual([90, 90, 0, 0, 0]);
  });

  it('at once for models that the stock is enough for', () => {
    expect(from(guide, { tape: [70, 1] })).toEqual([0, 0, 0, 70, 70]);
    // one run melts for 1 and 2
    expect(from(guide, { powder: [90, 1] })).toEqual([90, 90, 0, 0, 0]);
    expect(from(guide, { powder: [90, 2] })).toEqual([0, 90, 0, 0, 0]);
  });

  it('when the last of all that it uses is there', () => {
    const steps = [aStep('all', '1 min', '0 min', { uses: [{ material: 'gel' }, { material: 'tape' }] })];
    expect(from({ ...guide, steps }, { tape: [70, 0], powder: [90, 1], water: [50, 0] })).toEqual([
      70, 90, 90,
    ]);
  });
});

describe('planned backwards from a Friday at 16:00, hands are on', () => {
  const friday = '2026-12-11T16:00';
  function backwards(
    guides: readonly Guide[],
    demand: readonly DemandLine[],
    settings: Partial<PlanSettings> = {},
  ): string[] {
    const work = aWorkload(guides, demand, {}, { readyBy: friday, ...settings });
    const { lines, clock, goal, workspace, runs } = work;
    const windowOf = windowsOf({
      lines,
      program: workspace.program,
      clock,
      goal: goal!,
      arrivals: new Map(),
    });
    return runs.map((run) => {
      const { from, until, over } = windowOf(run);
      expect(over).toBe(goal!.readyBy - clock.origin);
      return `${run.step.id} ${run.run + 1}: ${from === 0 ? 'start' : from - over} to ${until - over}`;
    });
  }
  const one = (guide: Partial<Guide>, settings?: Partial<PlanSettings>) =>
    backwards([aGuide('x', guide)], [{ guide: 'x', wanted: 1 }], settings);
  const day = { for: time('1 d'), at: 'room' };

  it('until then, and the last so early that its wait is over too', () => {
    const steps = inOrder(
      aStep('pour', '10 min', '0 min', wait('5 h')),
      aStep('dry', '10 min', '0 min', wait('2 h')),
    );
    expect(one({ steps })).toEqual(['pour 1: start to 0', 'dry 1: start to -120']);
  });

  it('so late at the end that the model is still good, at its longest, its wait counted in', () => {
    const dry = aStep('dry', '10 min', '0 min', wait('2 h'));
    const steps = inOrder(aStep('pour', '10 min'), dry);
    // ready no earlier than a day before: hands off 2 h before that, and on 10 min before
    expect(one({ steps, keeps: [day] })).toEqual(['pour 1: start to 0', 'dry 1: -1570 to -120']);
    const longer = { for: time('2 d'), at: 'fridge' };
    expect(one({ steps, keeps: [longer, day] })).toEqual(['pour 1: start to 0', 'dry 1: -3010 to -120']);
    // good until noon of the day after
    expect(one({ steps: [dry], keeps: [day] }, { goodUntil: '2026-12-12T12:00' })).toEqual([
      'dry 1: -370 to -120',
    ]);
  });

  it('late enough, where they pause at closing, that enough of the work is left', () => {
    // good for 26 h: hands off no earlier than on Thursday at 14:00, after 4 h of work. With the break at 12:30 those
    // begin at 09:30; in one go, if that could be, at 10:00
    const carve = (mayPause: boolean) => ({
      steps: [aStep('carve', '4 h', '0 min', { mayPause })],
      keeps: [{ for: time('26 h'), at: 'room' }],
    });
    expect(one(carve(true))).toEqual([`carve 1: ${-(30 * 60 + 30)} to 0`]);
    expect(one(carve(false))).toEqual([`carve 1: ${-30 * 60} to 0`]);
  });

  it('as late for a machine, which never pauses', () => {
    const steps = [aStep('print', '4 h', '0 min', { people: 0, mayPause: true })];
    expect(one({ steps, keeps: [day] })).toEqual([`print 1: ${-28 * 60} to 0`]);
  });

  it('no more in what is past, however long that keeps', () => {
    const steps = [aStep('cast', '10 min'), aStep('sew', '10 min')];
    const finished = [{ guide: 'x', models: 0, past: [{ step: 'cast', models: 1 }] }];
    expect(one({ steps, keeps: [day] }, { finished })).toEqual(['cast 1: start to 0', 'sew 1: -1450 to 0']);
  });

  it('at any time in models that go into others: the first ones', () => {
    const insert = (more: Partial<Guide>) =>
      aGuide('insert', { steps: [aStep('cut', '10 min')], keeps: [day], ...more });
    const block = aGuide('block', {
      materials: [aRow('guide:insert', '2')],
      steps: [aStep('fit', '10 min')],
    });
    const demand = [{ guide: 'insert', wanted: 2 }, { guide: 'block', wanted: 1 }]; // prettier-ignore
    const cuts = (more: Partial<Guide> = {}, settings?: Partial<PlanSettings>) =>
      backwards([insert(more), block], demand, settings).filter((text) => text.startsWith('cut'));
    const any = (run: number) => `cut ${run}: start to 0`;
    const fresh = (run: number) => `cut ${run}: -1450 to 0`;
    expect(cuts()).toEqual([any(1), any(2), fresh(3), fresh(4)]);
    expect(cuts({}, { finished: [{ guide: 'insert', models: 1, past: [] }] })).toEqual([
      any(1),
      fresh(2),
      fresh(3),
    ]);
    // half of them fail: four are cut for the block
    expect(cuts({ yields: '1/2' })).toEqual([...[1, 2, 3, 4].map(any), ...[5, 6, 7, 8].map(fresh)]);
    // the fifth is there because some fail, and goes nowhere
    const four = [{ guide: 'block', wanted: 2 }];
    expect(backwards([insert({ yields: '9/10' }), block], four).slice(-5)).toEqual([1, 2, 3, 4, 5].map(any));
    expect(backwards([insert({}), block], [demand[1]!]).slice(-2)).toEqual([any(1), any(2)]);
  });
});
