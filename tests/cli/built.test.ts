import { execFile, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { folderWith, soundWorkspace } from './on-a-bench.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const command = `${root}dist/cli.js`;
const folder = folderWith(soundWorkspace);

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

it('does not complain when its reader has seen enough', async () => {
  const child = spawn(process.execPath, [command, 'help'], { stdio: ['ignore', 'pipe', 'pipe'] });
  child.stdout.destroy();
  let complaints = '';
  child.stderr.on('data', (text: Buffer) => (complaints += text.toString()));
  await new Promise((resolve) => child.on('close', resolve));
  expect(complaints).toBe('');
});
