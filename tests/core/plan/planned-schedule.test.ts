import { describe, expect, it } from 'vitest';
import type { Guide } from '../../../src/core/model/guide.ts';
import type { Program } from '../../../src/core/model/program.ts';
import type { PlanSettings } from '../../../src/core/plan/demand.ts';
import type { NoSchedule, Plan, PlannedJob, PlannedSchedule } from '../../../src/core/plan/result.ts';
import { dayNumber } from '../../../src/core/time/day.ts';
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

interface Case {
  readonly guide: Partial<Guide>;
  readonly program?: Partial<Program>;
  readonly wanted?: number;
  readonly settings?: Partial<PlanSettings>;
  readonly materials?: Parameters<typeof aWorkspace>[0]['materials'];
}

function planned({ guide, program = {}, wanted = 1, settings = {}, materials = [] }: Case): Plan {
  const workspace = aWorkspace({ program, materials, guides: [aGuide('x', guide)] });
  return planOf(workspace, [{ guide: 'x', wanted }], settings);
}

function scheduled(given: Case): PlannedSchedule {
  const { schedule } = planned(given);
  if ('none' in schedule) throw new Error(JSON.stringify(schedule));
  return schedule;
}

/** `Mon 09:00` of the reference week, or `08 …` in the weeks after. */
function clock(minute: number): string {
  const day = Math.floor(minute / 1440);
  const name = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'][day] ?? `day ${day + 1}`;
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${name} ${two(Math.floor((minute % 1440) / 60))}:${two(minute % 60)}`;
}
const times = ({ step, start, end, waitEnd }: PlannedJob): string =>
  [step, clock(start), clock(end), ...(waitEnd > end ? [clock(waitEnd)] : [])].join(' ');

describe('a schedule in the reference week', () => {
  it('is ready as early as can be, begins as late as that allows, and a wait goes on while closed', () => {
    const guide = {
      steps: inOrder(
        aStep('pour', '10 min', '0 min', { wait: { usual: time('12 h'), ifRoom: {} } }),
        aStep('unmould', '5 min'),
      ),
    };
    const plan = scheduled({ guide });
    // 12 h fit into any night: poured before closing, unmoulded at the next opening; Mon 16:50 to Tue 09:05 is 975 min
    expect(plan.jobs.map(times)).toEqual([
      'pour Mon 16:50 Mon 17:00 Tue 05:00',
      'unmould Tue 09:00 Tue 09:05',
    ]);
    expect(plan).toMatchObject({
      clock: 'reference-week',
      start: 540,
      firstHandsOn: 1010,
      makespan: 975,
      lowerBound: 975,
      optimal: true,
      buildTime: 975,
      handsOn: 15,
    });
    expect('leadTime' in plan).toBe(false);
  });

  it('begins on the first day that the program works', () => {
    const plan = scheduled({
      guide: {},
      program: { work: { days: ['Thu', 'Fri'], hours: [[600, 720]], closed: [] } },
    });
    expect([clock(plan.start), ...plan.jobs.map(times)]).toEqual(['Thu 10:00', 'make Thu 10:00 Thu 10:10']);
  });

  it('rounds the hands-on of a run up once: 3 models of 40 s are 2 min', () => {
    const steps = [aStep('tie', '0 min', '40 s', { for: { per: 'batch' } })];
    expect(scheduled({ guide: { steps }, wanted: 3 }).handsOn).toBe(2);
  });

  it('plans the longest wait of the rooms that the program has', () => {
    const wait = { usual: time('10 min'), ifRoom: { damp: time('30–40 min'), cold: time('2 h') } };
    const guide = { steps: [aStep('paint', '1 min', '0 min', { wait })] };
    expect(scheduled({ guide }).makespan).toBe(11);
    expect(scheduled({ guide, program: { room: ['damp'] } }).makespan).toBe(41);
    expect(scheduled({ guide, program: { room: ['damp', 'cold', 'hot'] } }).makespan).toBe(121);
  });

  it('takes a wait from what the product itself says', () => {
    const guide = {
      steps: [
        aStep('glue', '1 min', '0 min', { wait: { usual: { material: 'glue', time: 'full' }, ifRoom: {} } }),
      ],
    };
    expect(
      scheduled({ guide, materials: [aMaterial('glue', { times: { full: time('20 min') } })] }).makespan,
    ).toBe(21);
  });

  it('plans a wait of working days at its longest in the week', () => {
    // from Monday 09:10 one working day is until Tuesday 09:00; from Friday until Monday: three days are planned
    const guide = {
      steps: [aStep('send', '10 min', '0 min', { wait: { usual: time('1 working days'), ifRoom: {} } })],
    };
    expect(scheduled({ guide }).makespan).toBe(10 + 3 * 1440);
  });

  it('keeps a watched wait inside one stretch of opening', () => {
    // 200 min of watching would run over 12:30 from 09:20 on, but fit neither then nor after: 13:00 to 16:20
    const boil = aStep('boil', '15 min', '0 min', {
      wait: { usual: time('200 min'), ifRoom: {} },
      watched: true,
    });
    expect(scheduled({ guide: { steps: [boil] } }).jobs.map(times)).toEqual([
      'boil Mon 13:00 Mon 13:15 Mon 16:35',
    ]);
    const work = { days: ['Mon'] as const, hours: [[540, 740]] as const, closed: [] };
    expect(planned({ guide: { steps: [boil] }, program: { work } }).schedule).toMatchObject({
      none: { code: 'schedule-impossible' },
    });
  });

  it('lets a machine start in hours and run through the night', () => {
    const print = aStep('print', '20 h', '0 min', { people: 0 });
    const plan = scheduled({ guide: { steps: inOrder(print, aStep('clean', '5 min')) } });
    // 20 h before Tuesday 09:00 is Monday 13:00, when it is open
    expect(plan.jobs.map(times)).toEqual(['print Mon 13:00 Tue 09:00', 'clean Tue 09:00 Tue 09:05']);
    expect([plan.handsOn, plan.jobs[0]!.builders]).toEqual([5, []]);
  });

  it('pauses hands-on at closing only where it may', () => {
    const carve = (mayPause: boolean) => ({
      guide: { steps: [aStep('carve', '5 h', '0 min', { mayPause })] },
    });
    const [job] = scheduled(carve(true)).jobs;
    expect(times(job!)).toBe('carve Mon 09:00 Mon 14:30');
    expect(job!.stretches).toEqual([
      [540, 750],
      [780, 870],
    ]);
    expect(planned(carve(false)).schedule).toMatchObject({
      none: { code: 'schedule-impossible', variant: 'calendar', facts: { step: 'carve' } },
    });
  });

  it('has one builder after another at a place for one', () => {
    const guide = { steps: [aStep('spray', '10 min', '0 min', { at: { booth: 1 } })] };
    expect(scheduled({ guide, wanted: 3, program: { stations: { booth: 1 } } }).makespan).toBe(30);
    const free = planned({ guide, wanted: 2 });
    expect(free.schedule).toMatchObject({ makespan: 10 });
    expect(free.warnings).toMatchObject([{ code: 'station-not-listed', facts: { station: 'booth' } }]);
  });

  it('holds a place while models wait, until the next step takes them', () => {
    // one shelf, two models: the second is poured when the first is off the shelf
    const pour = aStep('pour', '10 min', '0 min', {
      wait: { usual: time('30 min'), ifRoom: {} },
      waitsAt: { shelf: { count: 1, per: 'model' } },
    });
    const plan = scheduled({
      guide: { steps: inOrder(pour, aStep('unmould', '5 min')) },
      wanted: 2,
      program: { stations: { shelf: 1 } },
    });
    const [first, second] = ['pour', 'unmould'].map((step) => plan.jobs.filter((job) => job.step === step));
    expect(second![0]!.start).toBeLessThanOrEqual(first![1]!.end);
  });

  it('keeps vapour and flame apart until the vapour has cleared', () => {
    const steps = [
      aStep('spray', '10 min', '0 min', { clearsIn: time('30 min'), uses: [{ material: 'adhesive' }] }),
      aStep('torch', '5 min', '0 min', { ignition: true, wait: { usual: time('15 min'), ifRoom: {} } }),
    ];
    const materials = [aMaterial('adhesive', { hazards: ['H222'] })];
    // flame first: 5 + 15 min, then spray 10: 30. Spray first: 10 + 30 to clear, then 20: 60
    const plan = scheduled({ guide: { steps, materials: [aRow('adhesive', '5 mL')] }, materials });
    expect(plan.jobs.map(times)).toEqual([
      'torch Mon 09:00 Mon 09:05 Mon 09:20',
      'spray Mon 09:20 Mon 09:30',
    ]);
  });

  it('refuses to schedule a step that makes vapour and lights it', () => {
    const steps = [aStep('flame', '5 min', '0 min', { ignition: true })];
    const plan = planned({
      guide: { steps, materials: [aRow('adhesive', '5 mL')] },
      materials: [aMaterial('adhesive', { hazards: ['H224'] })],
    });
    expect(plan.schedule).toEqual({
      none: {
        code: 'schedule-impossible',
        variant: 'exclusion',
        facts: { step: 'flame', other: 'flame' },
        helps: [],
      },
    });
  });

  it('says which limit cannot be kept, by the headings of the steps', () => {
    const steps = inOrder(
      aStep('mix', '5 min', '0 min', { useWithin: { any: time('10 min'), byStep: {} } }),
      aStep('pour', '15 min'),
    );
    const heading = (text: string, step: string) => ({
      ...{ heading: text, slug: step, step, has: [] },
      at: { line: 1, column: 1, length: 1 },
    });
    const sections = [heading('Tidy up', 'tidy'), heading('Mix the paste', 'mix')];
    const prose = { sections, links: [], images: [] };
    const facts = { step: 'Mix the paste', other: 'pour' };
    expect(planned({ guide: { steps, prose } }).schedule).toEqual({
      none: { code: 'schedule-impossible', variant: 'lags', facts, helps: [] },
    });
    const backwards = planned({ guide: { steps, prose }, settings: { readyBy: '2026-12-11T16:00' } });
    expect(backwards.schedule).toMatchObject({ none: { variant: 'lags', facts } });
  });

  it('says that too few builders stand in the way', () => {
    const lift = aStep('lift', '5 min', '0 min', { people: 3 });
    expect(planned({ guide: { steps: [lift] } }).schedule).toMatchObject({
      none: {
        code: 'schedule-impossible',
        variant: 'builders',
        facts: { step: 'lift', has: '2' },
        helps: [{ change: { kind: 'builders', count: 3 }, ready: 545 }],
      },
    });
    expect(planned({ guide: { steps: [lift] }, settings: { builders: 3 } }).schedule).toMatchObject({
      makespan: 5,
    });
  });

  it('says with how many places there would be one, having tried it, and nothing where none would do', () => {
    const at = (count: number) => ({ steps: [aStep('lay-out', '5 min', '0 min', { at: { bench: count } })] });
    const found = (count: number) =>
      planned({ guide: at(count), program: { stations: { bench: 1 } } }).schedule;
    expect(found(4)).toMatchObject({
      none: {
        variant: 'place',
        facts: { place: 'bench', has: '1' },
        helps: [{ change: { kind: 'place', id: 'bench', count: 4 }, ready: 545 }],
      },
    });
    expect((found(40) as { none: NoSchedule }).none.helps).toEqual([]);
  });

  it('makes none above 20,000 runs, at once', () => {
    const steps = inOrder(aStep('a', '1 min'), aStep('b', '1 min'), aStep('c', '1 min'));
    const begun = performance.now();
    const plan = planned({ guide: { steps }, wanted: 10_000 });
    expect(plan.schedule).toEqual({
      none: { code: 'too-many-runs', facts: { runs: '30000', most: '20000' }, helps: [] },
    });
    expect(plan.cost.handsOn).toBe(30_000);
    expect(performance.now() - begun).toBeLessThan(5_000);
  });

  it('is good until the longest that the first model keeps', () => {
    const keeps = [
      { for: time('1 d'), at: 'room' },
      { for: { months: '1' }, at: 'fridge' },
    ];
    const lasts = { ready: 550, useBy: 550 + 28 * 1440 };
    expect(scheduled({ guide: { keeps } }).lines).toEqual([{ ...lasts, models: [lasts] }]);
    const dated = scheduled({
      guide: { keeps },
      settings: { start: '2026-03-02T09:00', today: '2026-03-02' },
    }); // to 2 April, an hour less of clock
    expect(dated.lines[0]!.useBy! - dated.lines[0]!.ready).toBe(31 * 1440);
  });

  it('says so where the first have gone off before the last are ready', () => {
    const steps = [
      aStep('pour', '10 min', '0 min', {
        wait: { usual: time('1 d'), ifRoom: {} },
        waitsAt: { shelf: { count: 1, per: 'model' } },
      }),
    ];
    const guide = { steps, keeps: [{ for: time('1 d'), at: 'room' }] };
    const codes = (wanted: number) =>
      planned({ guide, wanted, program: { stations: { shelf: 1 } } }).warnings.map(({ code }) => code);
    expect([codes(1), codes(3)]).toEqual([[], ['first-goes-off']]);
  });
});

describe('tools in a schedule', () => {
  const mould = { tools: [aToolRow('tin', { held: { from: 'pour', to: 'unmould' } })] };
  const steps = inOrder(
    aStep('pour', '10 min', '0 min', { wait: { usual: time('12 h'), ifRoom: {} } }),
    aStep('unmould', '5 min'),
  );

  it('limit how many models are under way', () => {
    // 2 tins, 4 models: two nights
    const plan = planned({ guide: { ...mould, steps }, wanted: 4, program: { owned: { tin: 2 } } });
    const nights = new Set(
      'none' in plan.schedule ? [] : plan.schedule.jobs.map(({ start }) => Math.floor(start / 1440)),
    );
    expect([...nights]).toEqual([0, 1, 2]);
    expect(plan.tools).toEqual([{ tool: 'tin', peak: 2, owned: 2, toBuy: 0 }]);
  });

  it('count as many as the peak where nobody says how many there are, and are to buy', () => {
    const plan = planned({ guide: { ...mould, steps }, wanted: 4 });
    expect(plan.tools).toEqual([{ tool: 'tin', peak: 4, toBuy: 4 }]);
    expect(plan.warnings).toMatchObject([{ code: 'tool-not-listed', facts: { tool: 'tin', peak: '4' } }]);
  });

  it('are bought where a single run takes more than there are', () => {
    const batch = steps.map((step) => ({ ...step, for: { per: 'batch' } as const }));
    const plan = planned({ guide: { ...mould, steps: batch }, wanted: 4, program: { owned: { tin: 3 } } });
    expect(plan.tools).toEqual([{ tool: 'tin', peak: 4, owned: 3, toBuy: 1 }]);
    expect(plan.warnings).toMatchObject([
      { code: 'tool-short', facts: { peak: '4', owned: '3', toBuy: '1' } },
    ]);
  });

  it('in hand are held for the step alone', () => {
    const guide = { tools: [aToolRow('iron', { in: ['press'] })], steps: [aStep('press', '10 min')] };
    const plan = planned({ guide, wanted: 3, program: { owned: { iron: 1 } } });
    expect(plan.schedule).toMatchObject({ makespan: 30 });
    expect(plan.tools).toEqual([{ tool: 'iron', peak: 1, owned: 1, toBuy: 0 }]);
  });
});

describe('a schedule with dates', () => {
  const utc = (day: string, hour: number, minute = 0): number => dayNumber(day) * 1440 + hour * 60 + minute;
  const glue = (more: object = {}) => aMaterial('glue', { packs: [pack('1 L', '3 GBP', more)] });
  const guide = {
    materials: [aRow('glue', '10 mL')],
    steps: inOrder(
      aStep('cut', '10 min', '0 min', { uses: [] }),
      aStep('glue-up', '10 min', '0 min', { uses: [{ material: 'glue' }] }),
    ),
  };

  it('begins with what is at hand and waits for what is ordered', () => {
    // Thursday 26 November 10:00; three working days: there on Tuesday at opening
    const plan = planned({
      guide,
      materials: [glue({ arrivesIn: time('3 working days') })],
      settings: { start: '2026-11-26T10:00' },
    });
    expect(plan.schedule).toMatchObject({
      clock: 'dated',
      start: utc('2026-11-26', 10),
      ready: utc('2026-12-01', 9, 10),
      leadTime: 4 * 1440 + 23 * 60 + 10,
      buildTime: 20,
    });
    expect(plan.deliveries).toMatchObject([
      { ordered: utc('2026-11-26', 10), arrives: utc('2026-12-01', 9) },
    ]);
  });

  it('begins with the models that the stock is enough for', () => {
    // 3 models of 10 mL, 25 mL in stock: two at once, the third on Tuesday
    const settings = { start: '2026-11-26T10:00', stock: { glue: { value: '25', unit: 'mL' } } };
    const plan = planned({
      guide,
      wanted: 3,
      materials: [glue({ arrivesIn: time('3 working days') })],
      settings,
    });
    const jobs = 'none' in plan.schedule ? [] : plan.schedule.jobs.filter(({ step }) => step === 'glue-up');
    const waited = jobs.map(({ models, start }) => [models[0], start >= utc('2026-12-01', 9)]);
    expect(waited.sort()).toEqual([
      [1, false],
      [2, false],
      [3, true],
    ]);
  });

  it('waits for nothing that is in stock', () => {
    const settings = { start: '2026-11-26T10:00', stock: { glue: { value: '1', unit: 'L' } } };
    const plan = planned({ guide, materials: [glue({ arrivesIn: time('3 working days') })], settings });
    expect(plan.schedule).toMatchObject({ ready: utc('2026-11-26', 10, 20), buildTime: 20, leadTime: 20 });
  });

  it('keeps closed days and the clock of the place', () => {
    // Friday 27 March 2026 16:50, the clocks go forward on Sunday; Monday is closed: Tuesday 09:00 BST = 08:00 UTC
    const plan = planned({
      guide: { steps: [aStep('make', '20 min')] },
      program: {
        work: { days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], hours: [[540, 1020]], closed: ['2026-03-30'] },
      },
      settings: { start: '2026-03-27T16:50', today: '2026-03-27' },
    });
    expect(plan.schedule).toMatchObject({ ready: utc('2026-03-31', 8, 20) });
  });

  it('counts as at hand what nobody says the delivery of, and says so', () => {
    const plan = planned({ guide, materials: [glue()], settings: { start: '2026-11-26T10:00' } });
    expect(plan.warnings.map(({ code }) => code)).toEqual(['arrival-unsaid']);
    expect(plan.schedule).toMatchObject({ ready: utc('2026-11-26', 10, 20) });
  });
});

describe('more of it is another risk', () => {
  it('is said where a batch takes four times the spray of the author’s own', () => {
    const guide = { materials: [aRow('spray', '20 mL')], states: { for: 4, builders: 1 } };
    const materials = [
      aMaterial('spray', {
        name: 'Adhesive spray',
        hazards: ['H222', 'H336'],
        packs: [pack('400 mL', '5 GBP')],
      }),
    ];
    const warned = (wanted: number) => planned({ guide, materials, wanted }).warnings;
    expect(warned(15)).toEqual([]);
    expect(warned(16)).toMatchObject([
      { code: 'batch-much-larger', facts: { material: 'Adhesive spray', times: '4', made: '16', own: '4' } },
    ]);
  });
});

it('what is breathed in is added up over all rows that name it', () => {
  // made for 4: 4 x 5 + 1 = 21 mL; 20 models: 101 mL, nearly five times as much
  const rows = [aRow('spray', '5 mL'), aRow('spray', '1 mL', { id: 'primer', for: { per: 'batch' } })];
  const guide = aGuide('x', { materials: rows, states: { for: 4, builders: 1 } });
  const workspace = aWorkspace({ guides: [guide], materials: [aMaterial('spray', { hazards: ['H222'] })] });
  const { warnings } = planOf(workspace, [{ guide: 'x', wanted: 20 }]);
  expect(warnings.find(({ code }) => code === 'batch-much-larger')?.facts['times']).toBe('5');
});
