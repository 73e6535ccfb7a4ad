import { execFile, spawn } from 'node:child_process';
import { readFileSync, readdirSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { folderWith, soundWorkspace } from './on-a-bench.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const command = `${root}dist/cli.js`;
const folder = folderWith(soundWorkspace);

const knots = `---
title: First knots
status: draft
objectives:
  - { id: tie, does: tie a reef knot, shown-by: shows-how, practised-at: [boards] }
cohort:
  ratio: 4
  people: [{ id: trainees, count: 4 }]
session:
  booked: 1 h
  agenda:
    - { id: brief, takes: 10 min, script: [training-only, allergens] }
    - { id: practice, stations: [boards] }
    - { id: debrief, takes: 10 min }
    - { id: clear-up, takes: 5 min, script: [pockets, sharps-count] }
    - { id: slack, takes: the rest }
stations:
  - id: boards
    takes: 25 min
    seats: 4
    models: [{ guide: knot-board, uses: 1, share: own }]
---
You tie knots.
`;

/** The command as it is installed: one file that `npm run build` makes. */
async function installed(...args: string[]) {
  const call = promisify(execFile)(process.execPath, [command, ...args], { cwd: folder });
  return call.then(
    ({ stdout, stderr }) => ({ status: 0, stdout, stderr }),
    ({ code, stdout, stderr }: { code: number; stdout: string; stderr: string }) => ({
      status: code,
      stdout,
      stderr,
    }),
  );
}

it('tells the version of the package', async () => {
  const { version } = JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as { version: string };
  expect(await installed('--version')).toEqual({ status: 0, stdout: `${version}\n`, stderr: '' });
});

it('plans a guide, and hands its status to the shell', async () => {
  const plan = await installed('plan', 'knot-board=12', '--format', 'json');
  expect((JSON.parse(plan.stdout) as { format: string }).format).toBe('benchwright-plan/1');
  expect(plan.status).toBe(0);
  const wrong = await installed('plan', 'knot-bord');
  expect(wrong.stderr).toContain('Did you mean knot-board?');
  expect(wrong.stderr).not.toMatch(/^\s+at /m);
  expect([wrong.status, wrong.stdout]).toEqual([2, '']);
});

describe('the published site', () => {
  /** A module too, with a session on a day of its own. */
  const files = { ...soundWorkspace, 'modules/first-knots/module.md': knots };
  const backwards = Object.fromEntries(Object.entries(files).reverse());

  /** Every file of a site, by its path. */
  function bytesIn(out: string): ReadonlyMap<string, Buffer> {
    const entries = readdirSync(out, { recursive: true, withFileTypes: true }).filter((entry) =>
      entry.isFile(),
    );
    const paths = entries.map((entry) => join(entry.parentPath, entry.name)).sort();
    return new Map(paths.map((path) => [path.slice(out.length + 1), readFileSync(path)]));
  }

  async function publishedIn(workspace: string, out: string, environment: Readonly<Record<string, string>>) {
    const args = [command, 'publish', '--out', out, '--today', '2026-11-25'];
    await promisify(execFile)(process.execPath, args, {
      cwd: workspace,
      env: { PATH: process.env['PATH'], ...environment },
    });
    return bytesIn(join(workspace, out));
  }

  it('is the same to the byte in another zone, locale and folder, from files of another order and age', async () => {
    const here = await publishedIn(folderWith(files), 'site', { TZ: 'UTC', LANG: 'C' });
    const other = folderWith(backwards);
    for (const file of Object.keys(backwards)) utimesSync(join(other, file), 1, 1);
    const there = await publishedIn(other, 'elsewhere/öffentlich', {
      ...{
        TZ: 'Pacific/Kiritimati',
        LANG: 'tr_TR.UTF-8',
        LC_ALL: 'tr_TR.UTF-8',
        LANGUAGE: 'tr',
        HOME: other,
      },
      ...{ NO_COLOR: '1', USER: 'wjx-of-here' },
    });
    expect(here.size).toBeGreaterThan(60);
    expect([...here.keys()].filter((path) => /modules\/first-knots/.test(path)).length).toBeGreaterThan(8);
    expect([...there.keys()]).toEqual([...here.keys()]);
    const different = [...here].filter(([path, bytes]) => !bytes.equals(there.get(path)!));
    expect(different.map(([path]) => path)).toEqual([]);
    const telling = [...there].filter(([, bytes]) => bytes.includes(other) || bytes.includes('wjx-of-here'));
    expect(telling.map(([path]) => path)).toEqual([]);
  }, 60_000);
});

it('does not complain when its reader has seen enough', async () => {
  const child = spawn(process.execPath, [command, 'help'], { stdio: ['ignore', 'pipe', 'pipe'] });
  child.stdout.destroy();
  let complaints = '';
  child.stderr.on('data', (text: Buffer) => (complaints += text.toString()));
  await new Promise((resolve) => child.on('close', resolve));
  expect(complaints).toBe('');
});
