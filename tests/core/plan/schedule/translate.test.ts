import { describe, expect, it } from 'vitest';
import type { Guide, Step } from '../../../../src/core/model/guide.ts';
import type { Program } from '../../../../src/core/model/program.ts';
import type { PlanSettings } from '../../../../src/core/plan/demand.ts';
import { translate } from '../../../../src/core/plan/schedule/translate.ts';
import { windowsOf } from '../../../../src/core/plan/schedule/windows.ts';
import { aGuide, aMaterial, aRow, aStep, aToolRow, inOrder, time } from '../a-workspace.ts';
import { aWorkload } from './a-workload.ts';

function problem(
  guide: Partial<Guide>,
  wanted = 1,
  program: Partial<Program> = {},
  settings: Partial<PlanSettings> = {},
) {
  const work = aWorkload([aGuide('x', guide)], [{ guide: 'x', wanted }], program, settings, [
    aMaterial('solvent', { hazards: ['H225'] }),
  ]);
  const bounds = { ...work, program: work.workspace.program, arrivals: new Map() };
  return translate({ ...work, windowOf: windowsOf(bounds), search: {} });
}
const wait = (text: string) => ({ wait: { usual: time(text), ifRoom: {} } });
const one = (id: string, more: Partial<Step>) => aStep(id, '10 min', '0 min', more);

describe('a guide as a general problem', () => {
  it('has the hands-on of each run as a job, and each wait that matters by itself', () => {
    const steps = inOrder(
      one('melt', wait('1 h')),
      one('boil', { ...wait('20 min'), watched: true }),
      one('pour', wait('2 h')),
    );
    const { durations, calendarOf } = problem({ steps });
    // melt, boil, pour; boil is watched, and so in working hours; the last wait may be at any time
    expect(durations).toEqual([10, 10, 10, 20, 120]);
    expect(calendarOf).toEqual([0, 0, 0, 0, -1]);
  });

  it('has them over in time, planned backwards: hands-on with the wait, or the wait by itself', () => {
    const cast = one('cast', { ...wait('1 h'), waitsAt: { shelf: { count: 1, per: 'run' } } });
    const { releases, deadlines } = problem({ steps: [cast] }, 1, {}, { readyBy: '2026-12-11T16:00' });
    const [handsOff, over] = deadlines!;
    expect(over! - handsOff!).toBe(60);
    expect(over).toBeLessThan(Infinity);
    expect(releases).toEqual([0, 0]);
  });

  it('takes builders, places and tools in hand, of which the program says how many it has, for hands-on alone', () => {
    const steps = [one('fit', { ...wait('1 h'), people: 2, at: { bench: 3, corner: 1 } })];
    const tools = [
      aToolRow('iron', { in: ['fit'], count: 4 }),
      aToolRow('iron', { in: ['fit'] }),
      aToolRow('tin', { held: { from: 'fit', to: 'fit' } }),
      aToolRow('file', { in: ['fit'] }),
    ];
    const { demands, capacities } = problem({ steps, tools }, 1, {
      stations: { bench: 9 },
      owned: { iron: 8, tin: 7 },
    });
    expect(capacities).toEqual([2, 9, 8, 7]);
    expect(demands).toEqual([[2, 3, 5, 0], [0, 0, 0, 0]]); // prettier-ignore
  });

  it('takes nothing, and no time, for what is past', () => {
    const steps = inOrder(
      one('saw', { at: { bench: 1 }, mayPause: true }),
      one('print', { people: 0 }),
      one('fit', {}),
    );
    const past = (step: string) => ({ finished: [{ guide: 'x', models: 0, past: [{ step, models: 1 }] }] });
    const { durations, demands, calendarOf, splits, startsOnly, releases } = problem(
      { steps }, 2, { stations: { bench: 1 } }, past('print'),
    ); // prettier-ignore
    // saw 1, saw 2, print 1, print 2, fit 1, fit 2: the first of each but the last is over
    expect(durations).toEqual([0, 10, 0, 10, 10, 10]);
    expect(demands.map(([people, bench]) => `${people} ${bench}`)).toEqual([
      '0 0',
      '1 1',
      '0 0',
      '0 0',
      '1 0',
      '1 0',
    ]);
    expect(calendarOf).toEqual([-1, 0, -1, 0, 0, 0]);
    expect(splits).toEqual([false, true, false, false, false, false]);
    expect(startsOnly).toEqual([false, false, false, true, false, false]);
    expect(releases).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it('pauses at closing where a step may, and somebody is at it', () => {
    const { splits, startsOnly } = problem({
      steps: [one('carve', { mayPause: true }), one('cut', {}), one('print', { people: 0, mayPause: true })],
    });
    expect(splits).toEqual([true, false, false]);
    expect(startsOnly).toEqual([false, false, true]);
  });

  it('keeps the runs of a step together, with their waits', () => {
    const steps = [one('cut', {}), one('glue', wait('1 h'))];
    expect(problem({ steps }, 2).kinds).toEqual([0, 0, 1, 1, 1, 1]);
  });
});

describe('vapour and ignition', () => {
  const materials = [aRow('solvent', '5 mL')];
  const spray = one('spray', { uses: [{ material: 'solvent' }], clearsIn: time('30 min') });
  const torch = one('torch', { uses: [], ignition: true });

  it('are kept apart: vapour until it has cleared, a flame through its wait', () => {
    const steps = [spray, { ...torch, ...wait('15 min') }, one('sand', { uses: [] })];
    expect(problem({ steps, materials }, 2).exclusions).toEqual([
      // spray 1 and 2; torch 1 with its wait (job 6), torch 2 with its (7)
      {
        one: [{ job: 0, after: 30 }, { job: 1, after: 30 }],
        other: [{ job: 2, after: 0 }, { job: 6, after: 0 }, { job: 3, after: 0 }, { job: 7, after: 0 }],
      },
    ]); // prettier-ignore
  });

  it('are of no account alone, or when one of them is over', () => {
    expect(problem({ steps: [spray], materials }).exclusions).toEqual([]);
    expect(problem({ steps: [torch] }).exclusions).toEqual([]);
    const past = (step: string) => ({ finished: [{ guide: 'x', models: 0, past: [{ step, models: 1 }] }] });
    const steps = [spray, torch, one('sand', { uses: [] })];
    expect(problem({ steps, materials }, 1, {}, past('spray')).exclusions).toEqual([]);
    expect(problem({ steps, materials }, 1, {}, past('torch')).exclusions).toEqual([]);
  });
});
