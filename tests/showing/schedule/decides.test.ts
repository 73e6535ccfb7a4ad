import { describe, expect, it } from 'vitest';
import type { ChainLink, Load, NoSchedule, PlannedSchedule } from '../../../src/core/plan/result.ts';
import { decidesLines, loadLines, readyLines } from '../../../src/showing/terminal/plan-text-decides.ts';
import { showSchedule } from '../../../src/showing/schedule/show-schedule.ts';
import type { ShownSchedule } from '../../../src/showing/shown/shown-schedule.ts';
import { bench } from '../bench.ts';
import { at, job, noSchedule, plain, planOf, scheduleOf } from '../by-hand.ts';
import { leavesOf } from '../leaves.ts';

const shownOf = (schedule: PlannedSchedule, wanted = 12): ShownSchedule =>
  showSchedule('schedule', planOf(wanted, { schedule }), bench);
const chainOf = (schedule: PlannedSchedule): readonly string[] =>
  shownOf(schedule).decides.map(({ when, what, because }) =>
    plain([when.text, what.text, because.text].join(' | ')),
  );

// 12 blocks: the skins are cut for each, the gel is melted and poured in pots of four.
const melt = job('melt-the-gel', 1, at(1, '09:00'), { models: [1, 2, 3, 4], waitEnd: at(1, '09:30') });
const pours = [1, 2].map((run) =>
  job('pour-the-gel', run, at(run, '09:30'), { models: [1, 2, 3, 4].map((model) => model + (run - 1) * 4) }),
);

describe('what decides how long it takes', () => {
  it('says of each run when it is and why it began no earlier; the day where it is another', () => {
    const links: readonly ChainLink[] = [
      { job: 0, because: 'start' },
      { job: 1, because: 'step' },
      { job: 2, because: 'tool', id: 'stockpot' },
    ];
    const again = job('melt-the-gel', 2, at(2, '09:00'), { models: [5, 6, 7, 8] });
    expect(chainOf(scheduleOf([melt, pours[0]!, again], links))).toEqual([
      'day 1, 09:00–09:10 | Melt the gel, run 1 | the work begins here',
      '09:30–09:40 | Pour the gel, run 1 | follows the one before, after its wait of 20 min',
      'day 2, 09:00–09:10 | Melt the gel, run 2 | waits for a tool: Stockpot',
    ]);
  });

  const skins = Array.from({ length: 12 }, (_, i) => job('cut-the-skins', i + 1, at(1, '09:00') + 10 * i));

  it('tells runs of one step that follow each other as one: that each waits for a builder goes without saying', () => {
    const links = skins.map((_, job): ChainLink => ({ job, because: job === 0 ? 'start' : 'builders' }));
    expect(chainOf(scheduleOf(skins, links))).toEqual([
      'day 1, 09:00–11:00 | Cut the skins, models 1–12 | the work begins here',
    ]);
  });

  it('names what else held a stretch up, each once', () => {
    const reasons = ['hours', 'tool', 'builders', 'tool'] as const;
    const links = reasons.map((because, job): ChainLink => ({
      job,
      because,
      ...(because === 'tool' ? { id: 'stockpot' } : {}),
    }));
    expect(chainOf(scheduleOf(skins.slice(0, 4), links))).toEqual([
      'day 1, 09:00–09:40 | Cut the skins, models 1–4 | waits for the next opening, then waits for a tool: Stockpot',
    ]);
  });

  it('does not say that the work begins where work went on before', () => {
    const late = job('cut-the-skins', 13, at(1, '15:00'), { models: [12] });
    expect(chainOf(scheduleOf([melt, late], [{ job: 1, because: 'start' }]))).toEqual([
      'day 1, 15:00–15:10 | Cut the skins, model 12 | nothing before it holds it up',
    ]);
  });

  it('lists twelve of very many: the first and the last, and how many are between', () => {
    // 20 runs of two steps by turns, none of which is joined with the next.
    const jobs = Array.from({ length: 20 }, (_, i) =>
      job(i % 2 === 0 ? 'melt-the-gel' : 'pour-the-gel', 1, at(1, '09:00') + 10 * i),
    );
    const links = jobs.map((_, job): ChainLink => ({ job, because: 'step' }));
    const chain = chainOf(scheduleOf(jobs, links));
    expect(chain).toHaveLength(13);
    expect(chain[6]).toBe(' | 8 more in between | ');
    // The 15th begins at 09:00 + 140 min; its day is said, since the one before it is not listed.
    expect(chain[7]).toMatch(/^day 1, 11:20/);
    expect(chain[8]).toMatch(/^11:30/);
    expect(chainOf(scheduleOf(jobs.slice(0, 14), links.slice(0, 14)))).toHaveLength(14);
  });

  const reasons: readonly (readonly [Omit<ChainLink, 'job'>, string])[] = [
    [{ because: 'limit' }, 'must come soon after the one before'],
    [{ because: 'builders' }, 'waits for a builder'],
    [{ because: 'place', id: 'spray-area' }, 'waits for a place: spray area'],
    [{ because: 'apart' }, 'vapour and flame are kept apart'],
    [{ because: 'hours' }, 'waits for the next opening'],
    [{ because: 'delivery' }, 'waits for the delivery'],
  ];
  it.each(reasons)('has words for each reason: %o', (reason, words) => {
    const schedule = scheduleOf([pours[0]!], [{ job: 0, ...reason }]);
    expect(shownOf(schedule).decides[0]!.because.text).toBe(words);
  });

  it('is marked in the picture: runs on the chain with their waits, and no others', () => {
    const { strip } = shownOf(scheduleOf([melt, ...pours], [{ job: 0, because: 'start' }]));
    const marked = strip.rows.filter(({ decides }) => decides.length > 0);
    expect(marked.map(({ step }) => step)).toEqual(['melt-the-gel']);
    expect(marked[0]!.decides[0]!.from).toBe(0);
    expect(marked[0]!.decides[0]!.to).toBeGreaterThan(marked[0]!.bars[0]!.to);
  });
});

describe('how busy everything is', () => {
  const load = (rest: Partial<Load>): Load => ({
    kind: 'builders',
    id: '',
    has: 2,
    peak: 2,
    minutes: 90,
    available: 480,
    ...rest,
  });
  const loads: readonly Load[] = [
    load({}),
    load({ kind: 'place', id: 'stove', has: 1, peak: 1, minutes: 1, available: 960 }),
    load({ kind: 'tool', id: 'stockpot', has: 1, peak: 1, minutes: 300, available: 960 }),
  ];
  const schedule = scheduleOf([melt], [{ job: 0, because: 'start' }], { loads });

  it('is a whole percentage of the time; what is hardly used is not said to be unused', () => {
    // 90 of 480 min is 18.75 %; 1 of 960 is 0.1 %; 300 of 960 is 31.25 %.
    expect(shownOf(schedule).loads.map(({ name, busy }) => plain(`${name.text} ${busy.text}`))).toEqual([
      'Builders 19 %',
      'Stove under 1 %',
      'Stockpot 31 %',
    ]);
  });

  it('in a terminal names builders, and what is all in use for a quarter of the time or is waited for', () => {
    const short = (shown: ShownSchedule) => loadLines(shown, 70).map(plain);
    expect(short(shownOf(schedule))).toEqual([
      'Builders  2 of 2 at once  busy for 19 % of their hours',
      'Stockpot  1 of 1 at once  in use for 31 % of the time',
    ]);
    const awaited = scheduleOf([melt], [{ job: 0, because: 'place', id: 'stove' }], { loads });
    expect(short(shownOf(awaited))).toHaveLength(3);
  });
});

describe('when each model is ready', () => {
  const readyAt = (times: readonly number[], useBy?: number) => ({
    lines: [
      {
        ready: Math.max(...times),
        models: times.map((ready) => ({ ready, ...(useBy === undefined ? {} : { useBy: ready + useBy }) })),
      },
    ],
  });
  const rowsOf = (rest: Partial<PlannedSchedule>): readonly string[] =>
    readyLines(shownOf(scheduleOf([melt], [], rest)), 78).map(plain);

  it('groups models that are ready within the hour, with the first moment until which they are good', () => {
    const times = ['14:00', '14:30', '17:00', '17:00'].map((time) => at(2, time));
    expect(rowsOf(readyAt(times, 5 * 1440))).toEqual([
      'Models 1–2  ready day 2, 14:00 to 14:30  use by day 7, 14:00',
      'Models 3–4  ready day 2, 17:00           use by day 7, 17:00',
    ]);
  });

  it('says nothing where all are ready at once, nor of a use-by that lies months off in the reference week', () => {
    expect(rowsOf(readyAt([at(2, '14:00'), at(2, '14:20')]))).toEqual([]);
    const months = 300 * 1440;
    expect(rowsOf(readyAt([at(2, '14:00'), at(3, '14:00')], months))).toEqual([
      'Model 1  ready day 2, 14:00',
      'Model 2  ready day 3, 14:00',
    ]);
  });

  it('of many moments those of one day stand together', () => {
    const times = [1, 2].flatMap((day) => [9, 11, 13, 15].map((hour) => at(day, `${hour}:00`)));
    expect(rowsOf(readyAt(times))).toEqual([
      'Models 1–4  ready day 1, 09:00 to 15:00',
      'Models 5–8  ready day 2, 09:00 to 15:00',
    ]);
  });
});

describe('a plan made backwards', () => {
  it('says by when all is to be ready, and when to begin at the latest', () => {
    const { backwards } = shownOf(scheduleOf([melt], [], { readyBy: at(3, '16:00') }));
    expect(plain(backwards.text)).toBe(
      'Planned backwards: for all to be ready by day 3, 16:00, begin no later than day 1, 09:00.',
    );
    expect(shownOf(scheduleOf([melt], [])).backwards.text).toBe('');
  });
});

it('says how near a schedule is to the shortest possible', () => {
  const near = scheduleOf([melt], [], { optimal: false, makespan: 120, lowerBound: 95 });
  expect(plain(shownOf(near).bound.text)).toBe('This is at most 25 min from the shortest possible.');
  expect(shownOf({ ...near, lowerBound: 120 }).bound.text).toBe('No schedule is shorter.');
});

describe('where there is no schedule', () => {
  const none: NoSchedule = {
    code: 'schedule-impossible',
    variant: 'tool',
    facts: { step: 'Melt the gel', tool: 'stockpot', has: '1' },
    clock: { clock: 'reference-week', start: at(1, '09:00') },
    helps: [
      { change: { kind: 'builders', count: 3 }, ready: at(3, '12:30') },
      { change: { kind: 'tool', id: 'stockpot', count: 2 }, ready: at(2, '16:00') },
      { change: { kind: 'place', id: 'spray-area', count: 2 }, ready: at(2, '16:00') },
      { change: { kind: 'notice', minutes: 2 * 1440 }, ready: at(1, '16:00') },
      { change: { kind: 'later', minutes: 90 }, ready: at(4, '10:30') },
      { change: { kind: 'fewer', line: 0, wanted: 9 }, ready: at(2, '16:00') },
    ],
  };
  const shown = showSchedule('schedule', planOf(12, { schedule: { none } }), bench);

  it('says which limit and which step stand in the way', () => {
    expect(shown.none.text).toBe(
      'No schedule can keep every limit. “Melt the gel” needs more of “Stockpot” than there are: 1.',
    );
  });

  it('says of each proposal what it changes, and when all would be ready', () => {
    expect(shown.helps.map(({ text }) => plain(text))).toEqual([
      'With 3 builders all would be ready day 3, 12:30.',
      'With 2 of “Stockpot” all would be ready day 2, 16:00.',
      'With 2 of “spray area” all would be ready day 2, 16:00.',
      'Begun and ordered 2 d earlier, all would be ready day 1, 16:00.',
      'With 1 h 30 min more, all would be ready day 4, 10:30.',
      'With 9 models of “Gel block, Shallow vessel” instead of 12, all would be ready day 2, 16:00.',
    ]);
  });

  it('says days of the calendar where the plan has dates', () => {
    // 2026-12-01 12:30 in London, where winter time is that of UTC: 20,788 days since 1970.
    const ready = 20788 * 1440 + 12 * 60 + 30;
    const dated = {
      ...noSchedule,
      clock: { clock: 'dated', start: ready - 1440 },
      helps: [{ change: { kind: 'builders', count: 3 }, ready }],
    } as const;
    const { helps } = showSchedule('schedule', planOf(12, { schedule: { none: dated } }), bench);
    expect(plain(helps[0]!.text)).toBe('With 3 builders all would be ready Tue 1 December, 12:30.');
  });

  it('a material that cannot come in time is named, with both moments', () => {
    const late = {
      ...none,
      variant: 'delivery',
      facts: { material: 'Gelatin powder', needed: `@${at(1, '09:00')}`, arrives: `@${at(3, '09:00')}` },
    };
    const { none: why } = showSchedule('schedule', planOf(12, { schedule: { none: late } }), bench);
    expect(plain(why.text)).toContain(
      'Gelatin powder is needed by day 1, 09:00; ordered today, it is there day 3, 09:00 at the soonest.',
    );
  });
});

it('every text has a key of its own', () => {
  const loads: readonly Load[] = [{ kind: 'builders', id: '', has: 1, peak: 1, minutes: 1, available: 2 }];
  const schedule = scheduleOf([melt, ...pours], [{ job: 0, because: 'start' }], { loads });
  const keys = leavesOf(shownOf(schedule)).map(({ key }) => key);
  expect(new Set(keys).size).toBe(keys.length);
  expect(decidesLines(shownOf(schedule), false, 40).every((line) => line.length <= 40)).toBe(true);
});
