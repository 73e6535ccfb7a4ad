import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../src/core/model/guide.ts';
import type { Program } from '../../../src/core/model/program.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import type { NoSchedule, PlannedSchedule } from '../../../src/core/plan/result.ts';
import { isoTime } from '../../../src/core/time/iso-time.ts';
import { aGuide, aProgram, aStep, aToolRow, aWorkspace, inOrder, planOf, time } from './a-workspace.ts';

/** Worked by hand: Monday to Friday, 09:00–12:30 and 13:00–17:00. Today is Wednesday 25 November 2026. */

interface Case {
  readonly guide: Partial<Guide>;
  readonly program?: Partial<Program>;
  readonly wanted?: number;
  readonly settings: Partial<PlanSettings>;
}

function answer({ guide, program = {}, wanted = 1, settings }: Case) {
  return planOf(aWorkspace({ program, guides: [aGuide('x', guide)] }), [{ guide: 'x', wanted }], settings)
    .schedule;
}

function scheduled(given: Case): PlannedSchedule {
  const schedule = answer(given);
  if ('none' in schedule) throw new Error(JSON.stringify(schedule));
  return schedule;
}

function none(given: Case): NoSchedule {
  const schedule = answer(given);
  if (!('none' in schedule)) throw new Error('there is a schedule');
  return schedule.none;
}

const { zone } = aProgram();
/** `11-30 09:00` by the clock on the wall. */
const wall = (minute: number): string => isoTime(zone, minute).slice(5, 16).replace('T', ' ');
const rows = ({ jobs }: PlannedSchedule): string[] =>
  jobs.map(({ step, start, end, waitEnd }) =>
    [step, wall(start), wall(end).slice(6), ...(waitEnd > end ? [wall(waitEnd)] : [])].join(' '),
  );

const wait = (text: string) => ({ wait: { usual: time(text), ifRoom: {} } });
const block = {
  steps: inOrder(aStep('pour', '30 min', '0 min', wait('12 h')), aStep('unmould', '10 min')),
};

it('for which the hours that are left are too short says so, not that no stretch ever fits', () => {
  // 40 min of hands-on, until 09:30 of the morning: one half hour is open
  const settings = { readyBy: '2026-11-25T09:30' };
  const found = none({ guide: { steps: [aStep('carve', '40 min')] }, settings });
  expect(found).toMatchObject({ variant: 'calendarUntilReady', facts: { step: 'carve' } });
});

describe('a plan backwards from when all is ready', () => {
  it('begins as late as it can: poured the evening before, unmoulded just in time', () => {
    // unmould 09:50–10:00 on Monday; 12 h before 09:50 is Sunday 21:50, so that pour ends on Friday at 17:00
    const plan = scheduled({ guide: block, settings: { readyBy: '2026-11-30T10:00' } });
    expect(rows(plan)).toEqual(['pour 11-27 16:30 17:00 11-28 05:00', 'unmould 11-30 09:50 10:00']);
    expect(plan).toMatchObject({ clock: 'dated', optimal: true, lowerBound: plan.makespan });
    expect([plan.start, plan.firstHandsOn, plan.readyBy!, plan.ready].map(wall)).toEqual([
      '11-27 16:30',
      '11-27 16:30',
      '11-30 10:00',
      '11-30 10:00',
    ]);
  });

  it('chills through the night of a working day', () => {
    // unmould 14:50–15:00 on Thursday; hands off pour by 02:50, so by 17:00 on Wednesday, which is today
    const plan = scheduled({ guide: block, settings: { readyBy: '2026-11-26T15:00' } });
    expect(rows(plan)).toEqual(['pour 11-25 16:30 17:00 11-26 05:00', 'unmould 11-26 14:50 15:00']);
  });

  it('leaves the margin that was asked for, and none that was not', () => {
    const settings = { readyBy: '2026-11-30T11:00', margin: 120 };
    expect(rows(scheduled({ guide: { steps: [aStep('cut', '10 min')] }, settings }))).toEqual([
      'cut 11-27 16:50 17:00',
    ]);
    expect(wall(scheduled({ guide: block, settings }).readyBy!)).toBe('11-30 09:00');
  });

  it('ends with the last wait', () => {
    const glue = { steps: [aStep('glue', '20 min', '0 min', wait('90 min'))] };
    expect(rows(scheduled({ guide: glue, settings: { readyBy: '2026-11-30T12:00' } }))).toEqual([
      'glue 11-30 10:10 10:30 11-30 12:00',
    ]);
  });

  it('keeps a hold limit from behind as well', () => {
    // pour at most 20 min after melt: unmould 09:00–09:05 on Monday after 12 h, so pour ends on Friday at 17:00
    const steps = inOrder(
      aStep('melt', '30 min', '0 min', { useWithin: { any: time('20 min'), byStep: {} } }),
      aStep('pour', '15 min', '0 min', wait('12 h')),
      aStep('unmould', '5 min'),
    );
    expect(rows(scheduled({ guide: { steps }, settings: { readyBy: '2026-11-30T09:05' } }))).toEqual([
      'melt 11-27 16:15 16:45',
      'pour 11-27 16:45 17:00 11-28 05:00',
      'unmould 11-30 09:00 09:05',
    ]);
  });

  it('has a machine started in hours that runs on through the night', () => {
    // 20 h of printing end by 09:55 on Tuesday, so it is started on Monday by 13:55
    const steps = inOrder(aStep('print', '20 h', '0 min', { people: 0 }), aStep('clean', '5 min'));
    expect(rows(scheduled({ guide: { steps }, settings: { readyBy: '2026-12-01T10:00' } }))).toEqual([
      'print 11-30 13:55 09:55',
      'clean 12-01 09:55 10:00',
    ]);
  });

  it('turns tins round as late as it can', () => {
    // two tins, four blocks, each in its tin from pour to unmould over a night: the last two are unmoulded on Monday,
    // the first two on Friday before the last are poured
    const guide = {
      steps: inOrder(aStep('pour', '10 min', '0 min', wait('12 h')), aStep('unmould', '5 min')),
      tools: [aToolRow('tin', { held: { from: 'pour', to: 'unmould' } })],
    };
    const plan = scheduled({
      guide,
      program: { owned: { tin: 2 } },
      wanted: 4,
      settings: { readyBy: '2026-11-30T17:00' },
    });
    const days = (step: string) =>
      plan.jobs.filter((job) => job.step === step).map(({ start }) => wall(start).slice(0, 5));
    expect(days('pour')).toEqual(['11-26', '11-26', '11-27', '11-27']);
    expect(days('unmould')).toEqual(['11-27', '11-27', '11-30', '11-30']);
    expect(plan.loads).toContainEqual(expect.objectContaining({ kind: 'tool', id: 'tin', has: 2, peak: 2 }));
  });

  it('lets finished models wait no longer than they must', () => {
    // three blocks, two builders: poured on Friday from 16:00 on, unmoulded at the last minute and not at opening
    const plan = scheduled({ guide: block, wanted: 3, settings: { readyBy: '2026-11-30T10:00' } });
    const starts = (step: string) =>
      plan.jobs.filter((job) => job.step === step).map(({ start }) => wall(start));
    expect(starts('pour')).toEqual(['11-27 16:00', '11-27 16:30', '11-27 16:30']);
    expect(starts('unmould')).toEqual(['11-30 09:40', '11-30 09:50', '11-30 09:50']);
  });

  it('says that it cannot be done by then, and how much later it could', () => {
    // today is Wednesday; poured today, unmoulded tomorrow from 09:00 on
    const no = none({ guide: block, settings: { readyBy: '2026-11-25T16:00' } });
    expect(no.code).toBe('schedule-impossible');
    expect(no.helps).toEqual([{ change: { kind: 'later', minutes: 1440 }, ready: expect.any(Number) }]);
    expect(wall(no.helps[0]!.ready)).toBe('11-26 16:00');
  });
});

describe('models that keep so long', () => {
  const steps = [aStep('cut', '60 min')];

  it('are not ready before they would go off', () => {
    // five of an hour each, alone, kept for 3 h, good until 17:00: the first is ready at 14:00 at the earliest; only
    // 13:00 to 17:00 is worked, so four can be done
    const keeps = [{ for: time('3 h'), at: 'room' }];
    const settings = { readyBy: '2026-11-30T17:00', builders: 1 };
    const plan = scheduled({ guide: { steps, keeps }, wanted: 4, settings });
    expect(rows(plan)).toEqual([
      'cut 11-30 13:00 14:00',
      'cut 11-30 14:00 15:00',
      'cut 11-30 15:00 16:00',
      'cut 11-30 16:00 17:00',
    ]);
    const no = none({ guide: { steps, keeps }, wanted: 5, settings });
    expect(no.helps.map(({ change }) => change)).toEqual([
      { kind: 'builders', count: 2 },
      { kind: 'fewer', line: 0, wanted: 4 },
    ]);
  });

  it('are good at their longest, wherever that is', () => {
    const keeps = [
      { for: time('3 h'), at: 'room' },
      { for: time('2 d'), at: 'fridge' },
    ];
    const settings = { readyBy: '2026-11-27T17:00', builders: 1 };
    const plan = scheduled({ guide: { steps, keeps }, wanted: 5, settings });
    expect(rows(plan)[0]).toBe('cut 11-27 11:30 12:30');
    for (const { useBy } of plan.lines[0]!.models) expect(useBy!).toBeGreaterThanOrEqual(plan.readyBy!);
  });

  it('are good until the session ends, where that is said', () => {
    // kept for a day and good until Friday 12:00: ready from Thursday 12:00 on, and by Thursday 15:00
    const keeps = [{ for: time('1 d'), at: 'fridge' }];
    const until = (goodUntil: string) => ({
      guide: { steps, keeps },
      settings: { readyBy: '2026-11-26T15:00', goodUntil },
    });
    expect(rows(scheduled(until('2026-11-27T12:00')))).toEqual(['cut 11-26 14:00 15:00']);
    expect(none(until('2026-11-27T15:01')).code).toBe('schedule-impossible');
  });

  it('for months by the calendar', () => {
    // what is ready on 28 February is good until 28 March, what is ready on 1 March until 1 April
    const keeps = [{ for: { months: '1' }, at: 'dry' }];
    const settings = { today: '2027-02-01', readyBy: '2027-03-01T17:00', goodUntil: '2027-03-31T10:00' };
    const plan = scheduled({ guide: { steps, keeps }, settings });
    expect(rows(plan)).toEqual(['cut 03-01 16:00 17:00']);
    expect(wall(plan.lines[0]!.models[0]!.useBy!).slice(0, 5)).toBe('04-01');
    expect(
      none({ guide: { steps, keeps }, settings: { ...settings, readyBy: '2027-02-26T17:00' } }).code,
    ).toBe('schedule-impossible');
  });

  it('are not begun too early where hands pause at closing', () => {
    // 5 h of carving that may pause: kept for 2 h and good until 17:00, so hands are off from 15:00 on
    const carve = [aStep('carve', '5 h', '0 min', { mayPause: true })];
    const keeps = [{ for: time('2 h'), at: 'room' }];
    const settings = { readyBy: '2026-11-30T15:00', goodUntil: '2026-11-30T17:00' };
    const plan = scheduled({ guide: { steps: carve, keeps }, settings });
    expect(rows(plan)).toEqual(['carve 11-30 09:30 15:00']);
    const late = { readyBy: '2026-11-30T15:00', goodUntil: '2026-11-30T17:01' };
    expect(none({ guide: { steps: carve, keeps }, settings: late }).code).toBe('schedule-impossible');
  });
});
