import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../../src/core/model/guide.ts';
import type { Program } from '../../../../src/core/model/program.ts';
import type { PlanSettings } from '../../../../src/core/plan/demand.ts';
import type { Load } from '../../../../src/core/plan/result.ts';
import { aGuide, aStep, aToolRow, aWorkspace, inOrder, planOf, time } from '../a-workspace.ts';

/** Monday to Friday, 09:00–12:30 and 13:00–17:00; two builders. */
function loads(
  guide: Partial<Guide>,
  wanted: number,
  program: Partial<Program> = {},
  settings: Partial<PlanSettings> = {},
): readonly Load[] {
  const workspace = aWorkspace({ program, guides: [aGuide('x', guide)] });
  const { schedule } = planOf(workspace, [{ guide: 'x', wanted }], settings);
  if ('none' in schedule) throw new Error(JSON.stringify(schedule));
  return schedule.loads;
}
const wait = (text: string) => ({ wait: { usual: time(text), ifRoom: {} } });
const pair = { for: { per: 'every', models: 2 } } as const;
const builders = (minutes: number, available: number, peak = 1) =>
  ({ kind: 'builders', id: '', has: 2, peak, minutes, available }) as const;

describe('how busy things are, from the first hands-on until all is ready', () => {
  it('counts builders with hands on, places also while models wait, tools in hand or held', () => {
    // two at once: poured 09:00–09:10, off the shelf at 10:10, trimmed until 10:15: 75 min
    const steps = inOrder(
      aStep('pour', '10 min', '0 min', {
        ...pair,
        ...wait('60 min'),
        at: { bench: 1 },
        waitsAt: { shelf: { count: 1, per: 'model' } },
      }),
      aStep('trim', '5 min', '0 min', { ...pair, people: 2 }),
    );
    const tools = [
      aToolRow('mould', { held: { from: 'pour', to: 'trim' } }),
      aToolRow('knife', { in: ['trim'] }),
    ];
    const program = { stations: { bench: 1, shelf: 5 }, owned: { mould: 3, knife: 2 } };
    expect(loads({ steps, tools }, 2, program)).toEqual([
      builders(10 + 2 * 5, 2 * 75, 2),
      { kind: 'place', id: 'bench', has: 1, peak: 1, minutes: 10, available: 75 },
      { kind: 'place', id: 'shelf', has: 5, peak: 2, minutes: 2 * 60, available: 5 * 75 },
      { kind: 'tool', id: 'mould', has: 3, peak: 2, minutes: 2 * 75, available: 3 * 75 },
      { kind: 'tool', id: 'knife', has: 2, peak: 1, minutes: 5, available: 2 * 75 },
    ]);
  });

  it('counts what is held once for all who share it, by dates too', () => {
    // one builder melts [1 2] and [3 4], 10 min each, and pours them, 5 min each: a pot for all four, 30 min
    const steps = inOrder(aStep('melt', '10 min', '0 min', pair), aStep('pour', '5 min', '0 min', pair));
    const guide = { steps, tools: [aToolRow('pot', { holds: 4, held: { from: 'melt', to: 'pour' } })] };
    const program = { owned: { pot: 1 }, builders: 1 };
    for (const settings of [{}, { start: '2026-11-26T10:00' }])
      expect(loads(guide, 4, program, settings)).toEqual([
        { ...builders(30, 30), has: 1 },
        { kind: 'tool', id: 'pot', has: 1, peak: 1, minutes: 30, available: 30 },
      ]);
  });

  it('leaves builders alone while hands-on is paused, but not the place', () => {
    // 09:00–12:30 and 13:00–14:30
    const steps = [aStep('carve', '5 h', '0 min', { mayPause: true, at: { bench: 1 } })];
    expect(loads({ steps }, 1, { stations: { bench: 1 } })).toEqual([
      builders(300, 2 * 300),
      { kind: 'place', id: 'bench', has: 1, peak: 1, minutes: 330, available: 330 },
    ]);
  });

  it('has builders at work in working hours only, week after week', () => {
    // Monday 09:00 to the Monday after, 09:15: five days of 450 min, and 15 min
    const steps = inOrder(aStep('cast', '10 min', '0 min', wait('7 d')), aStep('trim', '5 min'));
    expect(loads({ steps }, 1)).toEqual([builders(15, 2 * (5 * 450 + 15))]);
    // where it is open round the clock, all the time
    const always = {
      days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'],
      hours: [[0, 1440]],
      closed: [],
    } as const;
    expect(loads({ steps }, 1, { work: always })).toEqual([builders(15, 2 * (7 * 1440 + 15))]);
  });

  it('counts what is full already from then on too', () => {
    // one tin holds a block since yesterday, which is unmoulded at 09:00; another block is out of its tin already
    const steps = inOrder(aStep('pour', '10 min', '0 min', wait('12 h')), aStep('unmould', '5 min'));
    const guide = { steps, tools: [aToolRow('tin', { held: { from: 'pour', to: 'unmould' } })] };
    const finished = [{ guide: 'x', models: 0, past: [{ step: 'pour', models: 2 }, { step: 'unmould', models: 1 }] }]; // prettier-ignore
    expect(loads(guide, 2, { owned: { tin: 4 } }, { finished })).toEqual([
      builders(5, 2 * 5),
      { kind: 'tool', id: 'tin', has: 4, peak: 1, minutes: 5, available: 4 * 5 },
    ]);
  });
});
