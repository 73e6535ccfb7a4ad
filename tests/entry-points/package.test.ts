import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** An empty folder in which the package is installed as it would be sent out, and nothing else. */
const elsewhere = mkdtempSync(join(tmpdir(), 'packed-'));
const installed = join(elsewhere, 'node_modules/benchwright');
afterAll(() => rmSync(elsewhere, { recursive: true, force: true }));

interface Package {
  readonly bin: { readonly benchwright: string };
  readonly exports: Readonly<Record<string, Readonly<Record<string, string>>>>;
}
const read = (): Package => JSON.parse(readFileSync(join(installed, 'package.json'), 'utf8')) as Package;

/** What a program of one line prints that stands in the empty folder. */
function says(program: string): string {
  return execFileSync(process.execPath, ['--input-type=module', '--eval', program], {
    cwd: elsewhere,
    encoding: 'utf8',
  });
}

// `npm test` builds first; without a build there is nothing to pack.
describe.skipIf(!existsSync(join(root, 'dist/cli.js')))('the package, unpacked into an empty folder', () => {
  beforeAll(() => {
    const args = ['pack', '--json', '--ignore-scripts', '--pack-destination', elsewhere];
    const [packed] = JSON.parse(execFileSync('npm', args, { cwd: root, encoding: 'utf8' })) as [
      { filename: string },
    ];
    mkdirSync(installed, { recursive: true });
    execFileSync('tar', ['-xzf', join(elsewhere, packed.filename), '-C', installed, '--strip-components=1']);
  }, 60_000);

  it('names only files that are in it', () => {
    const { bin, exports } = read();
    const named = [bin.benchwright, ...Object.values(exports).flatMap((entry) => Object.values(entry))];
    expect(named.filter((file) => !existsSync(join(installed, file)))).toEqual([]);
    expect(Object.keys(exports)).toEqual(['.', './schedule', './cutting', './packs']);
  });

  it.each([
    ['benchwright', ['check', 'makePlan', 'planJson', 'publish', 'readWorkspace', 'showPlan']],
    ['benchwright/schedule', ['schedule']],
    ['benchwright/cutting', []],
    ['benchwright/packs', []],
  ])('%s is there for other programs, and needs no other package', (name, functions) => {
    const program = `import * as all from '${name}'; console.log(JSON.stringify(Object.keys(all)))`;
    const names = JSON.parse(says(program)) as string[];
    expect(names.length).toBeGreaterThan(0);
    expect(names).toEqual(expect.arrayContaining(functions));
  });

  it('solves a small schedule', () => {
    const program = `import { schedule } from 'benchwright/schedule';
      const problem = { durations: [3, 2], lags: [[0, 1, 3]], demands: [[1], [1]], capacities: [1] };
      console.log(schedule(problem).makespan)`;
    expect(says(program)).toBe('5\n');
  });

  it('has a command that helps, and a version', () => {
    const command = join(installed, read().bin.benchwright);
    const run = (...args: string[]) =>
      execFileSync(process.execPath, [command, ...args], { cwd: elsewhere, encoding: 'utf8' });
    expect(run('--help')).toContain('benchwright COMMAND');
    expect(run('--version')).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
