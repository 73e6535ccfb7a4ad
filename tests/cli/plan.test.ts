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
});
