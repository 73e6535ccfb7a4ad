import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { benchwright, folderWith, soundWorkspace } from './on-a-bench.ts';

const folder = folderWith(soundWorkspace);
const guide = soundWorkspace['guides/knot-board/guide.md']!;

interface PlanText {
  demand: { level?: string; wanted: number; spares: number; made: number }[];
  requirements: { amount: string }[];
  purchases: { fromStock: string; left: string; packs: { count: number }[] }[];
  schedule: { none?: string; start: string | number; jobs: { builders: number[] }[] };
}
async function planned(...args: string[]): Promise<PlanText> {
  const { status, out, err } = await benchwright(['plan', ...args, '--format', 'json'], { folder });
  expect([status, err.match(/^error/m)]).toEqual([0, null]);
  return JSON.parse(out) as PlanText;
}

describe('plan', () => {
  it('counts what is asked for: by number, by batch, or as the guide itself', async () => {
    expect((await planned('knot-board=12')).demand[0]).toMatchObject({
      level: 'plain',
      wanted: 12,
      made: 12,
    });
    expect((await planned('knot-board', '--batch', '3')).demand[0]).toMatchObject({ wanted: 3 });
    expect((await planned('knot-board:wet')).demand[0]).toMatchObject({ level: 'wet', wanted: 1 });
    expect((await planned('knot-board=2', 'knot-board:wet=3')).demand.map(({ wanted }) => wanted)).toEqual([
      2, 3,
    ]);
    // 12 × 600 mm = 7.2 m: two packs of 5 m
    expect((await planned('knot-board=12')).purchases[0]!.packs[0]!.count).toBe(2);
  });

  it.each([[['--spares', '10 %']], [['--spares', '10', '%']], [['--spares=10%']], [['--spares', '0.1']]])(
    'adds spares: %j',
    async (args) => {
      // 10 % of 12 is 1.2: two more
      expect((await planned('knot-board=12', ...args)).demand[0]).toMatchObject({
        wanted: 12,
        spares: 2,
        made: 14,
      });
    },
  );

  it('shares the work among as many builders as it is told', async () => {
    const most = async (...args: string[]) =>
      Math.max(...(await planned('knot-board=8', ...args)).schedule.jobs.flatMap(({ builders }) => builders));
    expect(await most()).toBe(1);
    expect(await most('--builders', '3')).toBe(3);
  });

  it('is in the reference week, or dated from a start', async () => {
    expect((await planned('knot-board')).schedule.start).toBe(9 * 60);
    const { schedule } = await planned('knot-board', '--start', '2026-11-30T10:15');
    expect(schedule.start).toBe('2026-11-30T10:15+00:00');
    expect((await planned('knot-board', '--start', '2026-11-30')).schedule.start).toBe(
      '2026-11-30T00:00+00:00',
    );
  });

  it('prints the plan for people in 80 columns, to standard output', async () => {
    const { status, out, err } = await benchwright(['plan', 'knot-board=2'], { folder });
    expect(out).toContain('Knot board');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(out).not.toContain('error');
    expect([status, err.match(/^error/m)]).toEqual([0, null]);
  });

  it('is the same bytes for the same call', async () => {
    const call = () => benchwright(['plan', 'knot-board=7', '--format', 'json'], { folder });
    expect((await call()).out).toBe((await call()).out);
  });
});

describe('a stock file', () => {
  it.each([
    ['stock.yaml', 'cord: 6.5 m\n'],
    ['stock.json', '{ "cord": "650 cm" }\n'],
    ['stock.yaml', 'cord: 2 x 3.25 m\n'],
  ])('%s is taken from before anything is bought', async (name, text) => {
    writeFileSync(join(folder, name), text);
    // 7.2 m less 6.5 m: one pack of 5 m, 4.3 m left
    const [cord] = (await planned('knot-board=12', '--stock', name)).purchases;
    expect(cord).toMatchObject({ fromStock: '6.5 m', packs: [{ count: 1 }], left: '4.3 m' });
  });

  it('can be what the last plan left', async () => {
    const left = (await planned('knot-board=12')).purchases[0]!.left;
    writeFileSync(join(folder, 'left.json'), JSON.stringify({ cord: left }));
    expect((await planned('knot-board', '--stock', 'left.json')).purchases[0]!.packs).toEqual([]);
    writeFileSync(join(folder, 'left.json'), JSON.stringify({ cord: '0 m' }));
    expect((await planned('knot-board', '--stock', 'left.json')).purchases[0]!.packs).toHaveLength(1);
  });

  it.each([
    ['chord: 3 m', 'error, stock-unknown', 'cord:'],
    ['cord: 3 kg', 'error, stock-not-comparable', 'in m'],
    ['cord: 3,5 m', 'error, decimal-comma', '3.5 m'],
    ['cord: [', 'error,', 'stock.yaml:1:'],
  ])('that says %s is refused by line', async (text, code, says) => {
    writeFileSync(join(folder, 'stock.yaml'), `${text}\n`);
    const { status, out, err } = await benchwright(['plan', 'knot-board', '--stock', 'stock.yaml'], {
      folder,
    });
    expect(err).toContain(code);
    expect(err).toContain(says);
    expect([status, out]).toEqual([1, '']);
  });
});

describe('a plan backwards', () => {
  const plannedFor = async (...args: string[]) =>
    (await planned('knot-board=2', '--ready-by', '2026-12-04T12:00', ...args)).schedule as unknown as {
      ready: string;
      readyBy: string;
      firstHandsOn: string;
    };

  it('is begun as late as it can be', async () => {
    // 2 × 10 min by one builder
    expect(await plannedFor()).toMatchObject({
      readyBy: '2026-12-04T12:00+00:00',
      firstHandsOn: '2026-12-04T11:40+00:00',
      ready: '2026-12-04T12:00+00:00',
    });
  });

  it.each(['30min', '30 min', '0.5 h', 'PT30M'])('is ready %s before, with that margin', async (margin) => {
    expect((await plannedFor('--margin', margin)).readyBy).toBe('2026-12-04T11:30+00:00');
  });

  it('takes any effort above nothing', async () => {
    for (const effort of ['2', '1/4', '0.5', '50 %'])
      expect(await plannedFor('--effort', effort)).toMatchObject({ ready: '2026-12-04T12:00+00:00' });
  });

  it('to a time that has gone by is refused', async () => {
    const args = ['plan', 'knot-board', '--ready-by', '2026-11-01'];
    const { status, err } = await benchwright(args, { folder });
    expect(err).toContain('error, time-in-the-past');
    expect(status).toBe(1);
  });
});

describe('a part', () => {
  const split = folderWith({
    ...soundWorkspace,
    'guides/knot-board/guide.md': guide
      .replace('lasts: 20 uses', 'parts:\n  - id: loop\n    lasts: 5 uses\n  - id: board\n    lasts: 90 uses')
      .replace('    hands-on: 10 min', '    for: each loop\n    hands-on: 10 min'),
  });

  it('is planned alone, also in a calendar', async () => {
    const args = ['plan', 'knot-board/loop=3', '--start', '2026-11-30T09:00'];
    const { status, out } = await benchwright([...args, '--format', 'json'], { folder: split });
    expect((JSON.parse(out) as PlanText).demand).toEqual([
      { guide: 'knot-board', level: 'plain', part: 'loop', wanted: 3, spares: 0, made: 3 },
    ]);
    expect(status).toBe(0);
    const calendar = await benchwright([...args, '--format', 'ics'], { folder: split });
    expect(calendar.out).toContain('UID:ready.knot-board.plain.loop.');
  });

  it('that a guide has not is named with what it has', async () => {
    const { status, err } = await benchwright(['plan', 'knot-board/lop'], { folder: split });
    expect(err).toContain('knot-board has no part “lop”. Did you mean loop?');
    expect(status).toBe(2);
  });
});

describe('other formats', () => {
  const out = async (...args: string[]) => benchwright(['plan', 'knot-board=12', ...args], { folder });

  it('csv is the shopping list, or with --list days who does what when', async () => {
    expect((await out('--format', 'csv')).out).toMatch(/^\uFEFFMaterial,.*\r\nCotton cord,7.2 m,0 m,2,5 m,/);
    expect((await out('--format', 'csv', '--list', 'days')).out).toMatch(/^\uFEFFDay,From,.*\r\n1,09:00,1,/);
  });

  it('ics is a calendar of a plan with dates, the same bytes for the same call', async () => {
    const calendar = await out('--format', 'ics', '--start', '2026-11-30');
    expect(calendar.out).toMatch(/^BEGIN:VCALENDAR\r\n[^]*END:VCALENDAR\r\n$/);
    expect(calendar.out).toContain('SUMMARY:Knot board\\, Plain: Tie it\\, all 12\\, builder 1\r\n');
    expect((await out('--format', 'ics', '--start', '2026-11-30')).out).toBe(calendar.out);
  });

  it('tell changes at the end of the text, and in JSON where they are asked for', async () => {
    expect((await out()).out).toMatch(/What if\n +- +.*one more/i);
    expect(await planned('knot-board=12')).not.toHaveProperty('whatIf');
    const { whatIf, curve } = (await planned('knot-board=12', '--what-if')) as unknown as {
      whatIf: { change: object; ready: number }[];
      curve: { models: number; outlay: string; full: boolean }[];
    };
    // 12 × 10 min: 120 min by one builder, 60 by two
    expect(whatIf[0]).toMatchObject({ change: { kind: 'builders', count: 2 }, ready: 540 + 60 });
    // 8 × 0.6 m = 4.8 m of 5 m at 3.20
    expect(curve[7]).toEqual({ models: 8, outlay: '0.40 GBP', full: true });
    expect(curve[8]!.full).toBe(false);
  });
});

describe('finished models of a stock file', () => {
  it('are not made again, and a plan of nothing but those has nothing to do', async () => {
    writeFileSync(join(folder, 'shelf.yaml'), 'cord: 1 m\nmodels:\n  - guide: knot-board\n    count: 3\n');
    expect((await planned('knot-board=5', '--stock', 'shelf.yaml')).demand[0]).toMatchObject({
      wanted: 5,
      finished: 3,
      made: 2,
    });
    const { status, out } = await benchwright(['plan', 'knot-board=3', '--stock', 'shelf.yaml'], { folder });
    expect(out).toContain('Knot board');
    expect(out).not.toMatch(/NaN|Infinity|undefined/);
    expect(status).toBe(0);
  });
});

describe('what is not planned', () => {
  it('a guide with an error: its findings on standard error, and 1', async () => {
    const broken = folderWith({
      ...soundWorkspace,
      'guides/knot-board/guide.md': guide.replace('600 mm\nsteps', '600 mmm\nsteps'),
    });
    const { status, out, err } = await benchwright(['plan', 'knot-board'], { folder: broken });
    expect(err).toContain('error, unit-unknown');
    expect(err).toContain('knot-board cannot be planned before the errors are mended.');
    expect([status, out]).toEqual([1, '']);
  });

  it('nor one that needs the model of another guide with an error', async () => {
    const insert = guide.replace('600 mm\nsteps', '600 mmm\nsteps').replace('Knot board', 'Peg');
    const rows = '    amount: 600 mm\n  - use: guide:peg\n    count: 2\nsteps';
    const both = folderWith({
      ...soundWorkspace,
      'guides/knot-board/guide.md': guide.replace('    amount: 600 mm\nsteps', rows),
      'guides/peg/guide.md': insert,
    });
    const { status, out, err } = await benchwright(['plan', 'knot-board'], { folder: both });
    expect(err).toMatch(/guides\/peg\/guide\.md[^]*error, unit-unknown/);
    expect([status, out]).toEqual([1, '']);
  });

  it('but its neighbours are, whatever is wrong with it', async () => {
    const other = guide.replace('600 mm\nsteps', '600 mmm\nsteps').replace('Knot board', 'Other board');
    const mixed = folderWith({ ...soundWorkspace, 'guides/other-board/guide.md': other });
    const { status, err } = await benchwright(['plan', 'knot-board'], { folder: mixed });
    expect([status, err.includes('other-board')]).toEqual([0, false]);
    expect((await benchwright(['plan', 'other-board'], { folder: mixed })).status).toBe(1);
  });

  it('work that no day has room for: what to buy is told all the same, and 3', async () => {
    const long = folderWith({
      ...soundWorkspace,
      'guides/knot-board/guide.md': guide.replace('10 min', '9 h'),
    });
    const { status, out } = await benchwright(['plan', 'knot-board', '--format', 'json'], { folder: long });
    expect((JSON.parse(out) as PlanText).schedule.none).toBe('schedule-impossible');
    expect(status).toBe(3);
  });

  it('is told as one JSON document on standard error where the plan was to be JSON', async () => {
    const documentOf = (err: string) =>
      JSON.parse(err) as { format: string; counts: object; findings: { code: string }[] };
    const args = ['plan', 'knot-board', '--format', 'json'];
    const refused = await benchwright([...args, '--ready-by', '2026-11-01'], { folder });
    expect(documentOf(refused.err).findings.map(({ code }) => code)).toContain('time-in-the-past');
    expect([refused.status, refused.out]).toEqual([1, '']);
    const broken = folderWith({
      ...soundWorkspace,
      'guides/knot-board/guide.md': guide.replace('600 mm\nsteps', '600 mmm\nsteps'),
    });
    const unread = await benchwright(args, { folder: broken });
    expect(documentOf(unread.err)).toMatchObject({
      format: 'benchwright-findings/1',
      findings: [{ code: 'unit-unknown' }],
    });
    expect([unread.status, unread.out]).toEqual([1, '']);
    writeFileSync(join(folder, 'stock.yaml'), 'chord: 3 m\n');
    const stock = await benchwright([...args, '--stock', 'stock.yaml'], { folder });
    expect(documentOf(stock.err).findings.map(({ code }) => code)).toContain('stock-unknown');
  });

  it('has no day list and no calendar: why is said, and 3', async () => {
    const long = folderWith({
      ...soundWorkspace,
      'guides/knot-board/guide.md': guide.replace('10 min', '9 h'),
    });
    for (const format of [['csv', '--list', 'days'], ['ics']]) {
      const args = ['plan', 'knot-board', '--start', '2026-11-30', '--format', ...format];
      const { status, out, err } = await benchwright(args, { folder: long });
      expect(err.replaceAll('\n', ' ')).toContain('does not fit in one stretch into the working hours');
      expect([status, out]).toEqual([3, '']);
    }
  });
});

describe('progress', () => {
  it('stands on a terminal while it lasts, without control codes where none are wanted', async () => {
    const call = (environment: Record<string, string>) =>
      benchwright(['plan', 'knot-board'], { folder, environment, isTerminal: true });
    expect((await call({})).err).toContain('\u001B[2KPlanning …');
    const plain = await call({ NO_COLOR: '1' });
    expect(plain.err).toContain('Planning …\n');
    expect(plain.out + plain.err).not.toContain('\u001B');
  });
});
