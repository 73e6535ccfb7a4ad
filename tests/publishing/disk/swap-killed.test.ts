import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, it } from 'vitest';

/*
 * Publishing in processes of their own, which are killed, or meet: what swap.test.ts proves change by change, on the
 * real disk and against the real clock.
 */

const folder = mkdtempSync(join(tmpdir(), 'benchwright-killed-'));
const command = join(folder, 'publish.mjs');
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** `node publish.mjs FOLDER VERSION` says when it begins, writes 40 files an edition, and says what came of it. */
beforeAll(async () => {
  const swap = fileURLToPath(new URL('../../../src/publishing/disk/swap.ts', import.meta.url));
  const contents = `
    import { writeSite } from ${JSON.stringify(swap)};
    const [, , out, version] = process.argv;
    const names = Array.from({ length: 40 }, (_, i) => 'p' + i + '/' + version + '.html');
    const files = new Map(['index.html', ...['trainees', 'staff'].flatMap((edition) =>
      ['index.html', ...names].map((name) => edition + '/' + name))]
      .map((path) => [path, new TextEncoder().encode(version.repeat(20000))]));
    process.stdout.write('begins\\n');
    const done = await writeSite(out, files, ['trainees', 'staff']);
    process.stdout.write('refused' in done ? done.refused[0].code : 'written');`;
  const made = await build({
    stdin: { contents, resolveDir: folder, loader: 'ts' },
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    write: false,
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
  writeFileSync(command, made.outputFiles[0]!.contents);
}, 60_000);

const started = (out: string, version: string): ChildProcess =>
  spawn(process.execPath, [command, out, version], { stdio: ['ignore', 'pipe', 'inherit'] });

/** What a publish says after it has begun; killed so many milliseconds after that, where a number is given. */
async function publish(out: string, version: string, killedAfter?: number): Promise<string> {
  const child = started(out, version);
  let said = '';
  child.stdout!.on('data', (text: Buffer) => {
    said += text.toString();
    if (killedAfter !== undefined && said === 'begins\n')
      setTimeout(() => child.kill('SIGKILL'), killedAfter);
  });
  await new Promise((resolve) => child.on('close', resolve));
  return said.replace('begins\n', '');
}

/** The versions that an edition's files are of; a whole one has 41 files of one version. */
function editionAt(out: string, edition: string): string {
  const entries = readdirSync(join(out, edition), { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile() && entry.name !== 'published-files.json');
  const texts = files.map((entry) => readFileSync(join(entry.parentPath, entry.name), 'utf8'));
  return `${texts.length} of ${[...new Set(texts.map((text) => `${text[0]}${text.length}`))].join(', ')}`;
}
const whole = (version: string): string => `41 of ${version}20000`;

it('killed in the middle leaves each edition whole, and the next publish makes the site new', async () => {
  const out = join(folder, 'killed');
  expect(await publish(out, 'a')).toBe('written');
  const ends = new Set<string>();
  for (const [i, wait] of [0, 3, 6, 9, 12, 15, 20, 25, 30, 40, 60].entries()) {
    const [version, next] = i % 2 === 0 ? ['b', 'a'] : ['c', 'a'];
    const said = await publish(out, version, wait);
    ends.add(said === '' ? 'killed' : said);
    for (const edition of ['trainees', 'staff']) {
      const isGone = !readdirSync(out).includes(edition);
      if (!isGone) expect([whole('a'), whole(version)]).toContain(editionAt(out, edition));
    }
    expect(await publish(out, next)).toBe('written');
    expect([editionAt(out, 'trainees'), editionAt(out, 'staff')]).toEqual([whole('a'), whole('a')]);
    expect(readdirSync(out).filter((name) => /\.(new|old|whole)$/.test(name))).toEqual([]);
  }
  expect([...ends]).toContain('killed');
}, 60_000);

it('of four that meet at least one writes, the others say so, and what is there is of one that wrote', async () => {
  const out = join(folder, 'met');
  const versions = ['a', 'b', 'c', 'd'];
  const said = await Promise.all(versions.map((version) => publish(out, version)));
  expect(said.filter((one) => one !== 'written' && one !== 'publish-under-way')).toEqual([]);
  const written = versions.filter((_, i) => said[i] === 'written').map(whole);
  expect(written).toContain(editionAt(out, 'trainees'));
  expect(editionAt(out, 'staff')).toBe(editionAt(out, 'trainees'));
}, 60_000);
