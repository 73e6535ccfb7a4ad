import { describe, expect, it } from 'vitest';
import type { Step } from '../../../../src/core/model/guide.ts';
import type { PlanSettings } from '../../../../src/core/plan/demand.ts';
import { insertLags } from '../../../../src/core/plan/schedule/insert-lags.ts';
import { lagsOf } from '../../../../src/core/plan/schedule/lags.ts';
import { aGuide, aRow, aStep, inOrder, time } from '../a-workspace.ts';
import { aWorkload, lagText } from './a-workload.ts';

const wait = (text: string) => ({ wait: { usual: time(text), ifRoom: {} } });
const every = (models: number) => ({ for: { per: 'every', models } as const });
const forPart = (part: string) => ({ for: { per: 'part', part } as const });

describe('what must come before what', () => {
  function lags(steps: readonly Step[], wanted: number, settings: Partial<PlanSettings> = {}): string[] {
    const work = aWorkload([aGuide('x', { steps })], [{ guide: 'x', wanted }], {}, settings);
    return lagsOf(work.lines, work.jobs).map((lag) => lagText(lag, work));
  }
  const past = (step: string, models: number) => ({
    finished: [{ guide: 'x', models: 0, past: [{ step, models }] }],
  });

  it('a run begins when every run before it that shares a model has waited its time', () => {
    // melted for [1 2 3] [4 5], poured for [1 2] [3 4] [5]
    const steps = inOrder(
      aStep('melt', '9 min', '0 min', { ...every(3), ...wait('60 min') }),
      aStep('pour', '5 min', '0 min', every(2)),
    );
    expect(lags(steps, 5)).toEqual([
      'melt 1 end + 60 <= pour 1 start',
      'melt 1 end + 60 <= pour 2 start',
      'melt 2 end + 60 <= pour 2 start',
      'melt 2 end + 60 <= pour 3 start',
    ]);
  });

  it('a step waits for those that it names, and for no other', () => {
    const steps = [
      aStep('saw', '1 min'),
      aStep('sew', '1 min'),
      aStep('fill', '1 min', '0 min', { after: ['sew'] }),
      aStep('fit', '1 min', '0 min', { after: ['saw', 'fill'] }),
    ];
    expect(lags(steps, 1)).toEqual([
      'sew 1 end <= fill 1 start',
      'saw 1 end <= fit 1 start',
      'fill 1 end <= fit 1 start',
    ]);
  });

  it('a hold limit binds the end of what is next, or of the step that it names', () => {
    const limited = (useWithin: Step['useWithin']) =>
      lags(
        inOrder(
          aStep('mix', '1 min', '0 min', { useWithin }),
          aStep('pour', '1 min'),
          aStep('level', '1 min'),
        ),
        1,
      ).filter((lag) => lag.includes('-'));
    expect(limited({ any: time('10 min'), byStep: {} })).toEqual(['pour 1 end - 10 <= mix 1 end']);
    expect(limited({ any: time('10 min'), byStep: { level: time('20 min') } })).toEqual([
      'pour 1 end - 10 <= mix 1 end',
      'level 1 end - 20 <= mix 1 end',
    ]);
  });

  it('what is past has no order and no limit any more', () => {
    // block 1 has been mixed and poured, block 2 only mixed: nobody knows when
    const steps = inOrder(
      aStep('mix', '1 min', '0 min', { ...wait('5 min'), useWithin: { any: time('10 min'), byStep: {} } }),
      aStep('pour', '1 min'),
    );
    const { finished } = past('pour', 1);
    const mixed = {
      finished: [{ ...finished[0]!, past: [...finished[0]!.past, { step: 'mix', models: 2 }] }],
    };
    expect(lags(steps, 3, mixed)).toEqual([
      'pour 3 end - 10 <= mix 3 end',
      'mix 2 end <= pour 2 start',
      'mix 3 end + 5 <= pour 3 start',
    ]);
  });

  it('the last wait begins when hands leave, and one that is watched or burns at that very minute', () => {
    const last = (more: Partial<Step>) =>
      lags([aStep('cast', '1 min', '0 min', { ...wait('9 min'), ...more })], 1);
    const notBefore = 'cast 1 end <= cast 1 wait start';
    const notAfter = 'cast 1 wait start <= cast 1 end';
    expect(last({})).toEqual([notBefore]);
    expect(last({ watched: true })).toEqual([notBefore, notAfter]);
    expect(last({ ignition: true })).toEqual([notBefore, notAfter]);
  });

  it('a wait between two steps is only time, unless it is watched or burns', () => {
    const between = (more: Partial<Step>) =>
      lags(
        inOrder(aStep('fire', '1 min', '0 min', { ...wait('9 min'), ...more }), aStep('cool', '1 min')),
        1,
      );
    const order = 'fire 1 end + 9 <= cool 1 start';
    expect(between({})).toEqual([order]);
    for (const more of [{ watched: true }, { ignition: true }])
      expect(between(more)).toEqual([
        order,
        'fire 1 end <= fire 1 wait start',
        'fire 1 wait start <= fire 1 end',
      ]);
  });

  it('planned backwards, the last wait counts by itself only where it takes a place, and begins at once', () => {
    const backwards = { readyBy: '2026-12-11T16:00' };
    const cast = (more: Partial<Step>) => [aStep('cast', '1 min', '0 min', { ...wait('9 min'), ...more })];
    expect(lags(cast({}), 1, backwards)).toEqual([]);
    expect(lags(cast({ waitsAt: { shelf: { count: 1, per: 'run' } } }), 1, backwards)).toEqual([
      'cast 1 end <= cast 1 wait start',
      'cast 1 wait start <= cast 1 end',
    ]);
  });
});

describe('models that go into others', () => {
  const insert = (more: Parameters<typeof aGuide>[1] = {}) =>
    aGuide('insert', { steps: [aStep('cut', '2 min', '0 min', wait('30 min'))], ...more });
  /** Two inserts in each block, which are set in two blocks at a time. */
  const block = aGuide('block', {
    materials: [aRow('foam', '1'), aRow('guide:insert', '2')],
    steps: inOrder(
      aStep('carve', '5 min', '0 min', { uses: [{ material: 'foam' }] }),
      aStep('set-in', '3 min', '0 min', { ...every(2), uses: [{ material: 'guide:insert' }] }),
    ),
  });
  const takesOne = (id: string, step: string) =>
    aGuide(id, { materials: [aRow('guide:insert', '1')], steps: [aStep(step, '3 min')] });
  function lags(
    guides: readonly ReturnType<typeof aGuide>[],
    wanted: number,
    settings: Partial<PlanSettings> = {},
  ): string[] {
    const demand = guides.filter(({ id }) => id !== 'insert').map(({ id: guide }) => ({ guide, wanted }));
    const work = aWorkload(guides, demand, {}, settings);
    return insertLags(work.lines, work.inserts, work.jobs).map((lag) => lagText(lag, work));
  }

  it('are ready before the run that uses them: the first ones for the first that need them', () => {
    expect(lags([block, insert()], 3)).toEqual([
      'cut 1 end + 30 <= set-in 1 start',
      'cut 2 end + 30 <= set-in 1 start',
      'cut 3 end + 30 <= set-in 1 start',
      'cut 4 end + 30 <= set-in 1 start',
      'cut 5 end + 30 <= set-in 2 start',
      'cut 6 end + 30 <= set-in 2 start',
    ]);
  });

  it('are cut several at a time, where their own guide says so', () => {
    // inserts [1 2 3] [4 5 6]
    const sheet = insert({ steps: [aStep('cut', '2 min', '0 min', every(3))] });
    expect(lags([block, sheet], 3)).toEqual([
      'cut 1 end <= set-in 1 start',
      'cut 2 end <= set-in 1 start',
      'cut 2 end <= set-in 2 start',
    ]);
  });

  it('are ready when each of their last steps is', () => {
    const twoEnds = insert({
      parts: [{ id: 'tube', name: 'Tube' }, { id: 'cap', name: 'Cap' }], // prettier-ignore
      steps: [
        aStep('wash', '1 min'),
        aStep('cut', '1 min', '0 min', { ...forPart('tube'), after: ['wash'] }),
        aStep('cast', '1 min', '0 min', forPart('cap')),
      ],
    });
    expect(lags([block, twoEnds], 1)).toEqual([
      'cut 1 end <= set-in 1 start',
      'cut 2 end <= set-in 1 start',
      'cast 1 end <= set-in 1 start',
      'cast 2 end <= set-in 1 start',
    ]);
  });

  it('are counted as if those that fail were spread evenly', () => {
    // half fail: 12 made for 6; good ones 1 to 4 are the 2nd, 4th, 6th and 8th, good ones 5 and 6 the 10th and 12th
    expect(lags([block, insert({ yields: '1/2' })], 3)).toEqual([
      ...[2, 3, 4, 5, 6, 7, 8].map((cut) => `cut ${cut} end + 30 <= set-in 1 start`),
      ...[10, 11, 12].map((cut) => `cut ${cut} end + 30 <= set-in 2 start`),
    ]);
  });

  it('go first into what is named first, and then into what comes after', () => {
    // one insert for each block and each stand: cut 1 to 2 for the blocks, 3 to 4 for the stands
    expect(lags([takesOne('block', 'set-in'), takesOne('stand', 'fit'), insert()], 2)).toEqual([
      'cut 1 end + 30 <= set-in 1 start',
      'cut 2 end + 30 <= set-in 2 start',
      'cut 3 end + 30 <= fit 1 start',
      'cut 4 end + 30 <= fit 2 start',
    ]);
  });

  it('go into the first steps where none says that it uses them', () => {
    const unsaid = aGuide('block', {
      materials: [aRow('guide:insert', '2')],
      steps: inOrder(aStep('carve', '5 min'), aStep('set-in', '3 min')),
    });
    expect(lags([unsaid, insert()], 1)).toEqual([
      'cut 1 end + 30 <= carve 1 start',
      'cut 2 end + 30 <= carve 1 start',
    ]);
  });

  it('are not waited for where they are finished: those go first', () => {
    // three of six are there: the first run needs one more, the second two
    const finished = [{ guide: 'insert', models: 3, past: [] }];
    expect(lags([block, insert()], 3, { finished })).toEqual([
      'cut 1 end + 30 <= set-in 1 start',
      'cut 2 end + 30 <= set-in 2 start',
      'cut 3 end + 30 <= set-in 2 start',
    ]);
    expect(lags([block, insert()], 3, { finished: [{ guide: 'insert', models: 4, past: [] }] })).toEqual([
      'cut 1 end + 30 <= set-in 2 start',
      'cut 2 end + 30 <= set-in 2 start',
    ]);
  });

  it('are not needed by blocks that have theirs', () => {
    // two of six blocks are past setting in: inserts 1 to 4 are for blocks 3 and 4, 5 to 8 for 5 and 6
    const finished = [{ guide: 'block', models: 0, past: [{ step: 'set-in', models: 2 }] }];
    expect(lags([block, insert()], 6, { finished })).toEqual([
      ...[1, 2, 3, 4].map((cut) => `cut ${cut} end + 30 <= set-in 2 start`),
      ...[5, 6, 7, 8].map((cut) => `cut ${cut} end + 30 <= set-in 3 start`),
    ]);
  });

  it('go elsewhere first, and none of those is awaited by what has its own', () => {
    // cut 1 and 2 are for the blocks; one of two stands is past fitting, and cut 3 is for the other
    const finished = [{ guide: 'stand', models: 0, past: [{ step: 'fit', models: 1 }] }];
    expect(lags([takesOne('block', 'set-in'), takesOne('stand', 'fit'), insert()], 2, { finished })).toEqual([
      'cut 1 end + 30 <= set-in 1 start',
      'cut 2 end + 30 <= set-in 2 start',
      'cut 3 end + 30 <= fit 2 start',
    ]);
  });
});
