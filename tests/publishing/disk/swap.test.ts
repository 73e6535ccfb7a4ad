import { spawnSync } from 'node:child_process';
import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  readlinkSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import type * as disk from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { showDiagnostic } from '../../../src/showing/terminal/diagnostic.ts';
import { lockFolder, lockName } from '../../../src/publishing/disk/lock.ts';
import type { Files } from '../../../src/publishing/paths/files.ts';
import { writeSite } from '../../../src/publishing/disk/swap.ts';

/** What the disk does to the n-th change that is asked of it, counted from 0; `half`: a file is half written by then. */
const trouble = vi.hoisted(() => ({ asked: 0, at: -1, forEver: false, half: false }));

/** Every function that changes the disk, so that it can be stopped at any of its changes. */
vi.mock('node:fs/promises', async (original) => {
  const real = await original<typeof disk>();
  const stopping = <F extends (...args: never[]) => Promise<unknown>>(change: F): F =>
    (async (...args: Parameters<F>) => {
      const now = trouble.asked++;
      const isStopped = trouble.at >= 0 && (trouble.forEver ? now >= trouble.at : now === trouble.at);
      if (!isStopped) return change(...args);
      const [path, bytes] = args as unknown as [string, string | Uint8Array];
      if (trouble.half && now === trouble.at && (change as unknown) === real.writeFile)
        await real.writeFile(path, bytes.slice(0, bytes.length / 2));
      throw Object.assign(new Error('no space'), { code: 'ENOSPC' });
    }) as unknown as F;
  const { mkdir, writeFile, rename, rm, cp, link } = real;
  const changes = { mkdir, writeFile, rename, rm, cp, link };
  return {
    ...real,
    ...Object.fromEntries(Object.entries(changes).map(([name, f]) => [name, stopping(f as never)])),
  };
});

let out = '';
beforeEach(() => {
  out = join(mkdtempSync(join(tmpdir(), 'benchwright-swap-')), 'site');
  Object.assign(trouble, { asked: 0, at: -1, forEver: false, half: false });
});
afterEach(() => {
  trouble.at = -1;
  rmSync(dirname(out), { recursive: true, force: true });
});

const both = ['trainees', 'staff'] as const;

function site(version: string): Files {
  const text = (path: string): [string, Uint8Array] => [path, new TextEncoder().encode(`${version} ${path}`)];
  return new Map(
    ['index.html', 'trainees/index.html', `trainees/only-${version}/a.html`, 'staff/index.html'].map(text),
  );
}

/** Every file of the folder with its text, but for lists of files. */
function there(folder = out): Record<string, string> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  const paths = entries.map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1)).sort();
  const shown = paths.filter((path) => !path.endsWith('published-files.json'));
  return Object.fromEntries(shown.map((path) => [path, readFileSync(join(folder, path), 'utf8')]));
}

function expected(version: string): Record<string, string> {
  return Object.fromEntries(
    [...site(version)].sort().map(([path, bytes]) => [path, new TextDecoder().decode(bytes)]),
  );
}

function put(path: string, text: string): void {
  mkdirSync(dirname(join(out, path)), { recursive: true });
  writeFileSync(join(out, path), text);
}

/** The number of a process that has ended: it owns nothing any more. */
const deadProcess = String(spawnSync(process.execPath, ['-e', '']).pid);

describe('publishing into a folder', () => {
  it('writes all files, and the second time replaces them all: no file of the first is left', async () => {
    await writeSite(out, site('one'), both);
    expect(there()).toEqual(expected('one'));
    const published = await writeSite(out, site('two'), both);
    expect(there()).toEqual(expected('two'));
    expect(published).toMatchObject({
      editions: [
        { edition: 'trainees', files: 2 },
        { edition: 'staff', files: 1 },
      ],
    });
  });

  it('carries over what somebody else put there', async () => {
    await writeSite(out, site('one'), both);
    put('trainees/handout/ours.pdf', 'a handout');
    put('notes.txt', 'notes');
    await writeSite(out, site('two'), both);
    expect(there()).toEqual({
      ...expected('two'),
      'trainees/handout/ours.pdf': 'a handout',
      'notes.txt': 'notes',
    });
  });

  it('publishes one edition and leaves the other, and the page that leads to both', async () => {
    await writeSite(out, site('one'), both);
    const staff = new Map([...site('two')].filter(([path]) => !path.startsWith('trainees/')));
    await writeSite(out, staff, ['staff']);
    expect(there()).toEqual({ ...expected('one'), 'staff/index.html': 'two staff/index.html' });
  });

  it('does not empty a folder that it did not make', async () => {
    put('trainees/thesis.txt', 'years of work');
    const refused = await writeSite(out, site('one'), both);
    expect(refused).toMatchObject({
      refused: [{ code: 'folder-not-ours', facts: { folder: join(out, 'trainees') } }],
    });
    expect(there()).toEqual({ 'trainees/thesis.txt': 'years of work' });
  });

  it('does not write where a file stands in place of the folder', async () => {
    put('trainees', 'a file');
    expect(await writeSite(out, site('one'), both)).toMatchObject({ refused: [{ code: 'folder-not-ours' }] });
    expect(there()).toEqual({ trainees: 'a file' });
  });

  it('does not overwrite a page of somebody else, at the top or in an edition', async () => {
    put('index.html', 'my own page');
    const top = await writeSite(out, site('one'), both);
    expect(top).toMatchObject({
      refused: [{ code: 'foreign-file-in-the-way', facts: { file: join(out, 'index.html') } }],
    });
    rmSync(join(out, 'index.html'));
    await writeSite(out, site('one'), both);
    put('trainees/only-two/a.html', 'mine');
    const within = await writeSite(out, site('two'), both);
    expect(within).toMatchObject({ refused: [{ code: 'foreign-file-in-the-way' }] });
    expect(there()).toEqual({ ...expected('one'), 'trainees/only-two/a.html': 'mine' });
  });

  it('says in a sentence why nothing was written', async () => {
    put('trainees/thesis.txt', 'years of work');
    const refused = await writeSite(out, site('one'), both);
    const text = 'refused' in refused ? showDiagnostic(refused.refused[0]!) : '';
    expect(text.replace(/\s+/g, ' ')).toContain('holds files that publish did not make');
    expect(text).toContain('error, folder-not-ours');
  });
});

describe('two publishes at once', () => {
  it('the second says so and writes nothing', async () => {
    await writeSite(out, site('one'), both);
    const lock = await lockFolder(out);
    expect(await writeSite(out, site('two'), both)).toMatchObject({
      refused: [{ code: 'publish-under-way' }],
    });
    expect(there()).toEqual({ ...expected('one'), [lockName]: String(process.pid) });
    await ('release' in lock ? lock.release() : undefined);
    await writeSite(out, site('two'), both);
    expect(there()).toEqual(expected('two'));
  });

  it('of many that start together one writes, and the others stop before they begin', async () => {
    const all = await Promise.all(['a', 'b', 'c', 'd'].map((name) => writeSite(out, site(name), both)));
    const done = all.filter((result) => 'editions' in result);
    expect(done.length).toBeGreaterThanOrEqual(1);
    const versions = ['a', 'b', 'c', 'd'].map((name) => JSON.stringify(expected(name)));
    expect(versions).toContain(JSON.stringify(there()));
  });

  it('takes over the lock of a publish that is gone', async () => {
    mkdirSync(out, { recursive: true });
    put(lockName, deadProcess);
    await writeSite(out, site('one'), both);
    expect(there()).toEqual(expected('one'));
  });
});

/** How many changes a publish over an older site asks of the disk. */
async function changesOfPublish(): Promise<number> {
  await prepare();
  trouble.asked = 0;
  await writeSite(out, site('two'), both);
  const { asked } = trouble;
  rmSync(out, { recursive: true, force: true });
  return asked;
}

async function prepare(): Promise<void> {
  trouble.at = -1;
  await writeSite(out, site('one'), both);
  put('trainees/handout.pdf', 'a handout');
}

/** An edition at one moment: the whole old one, the whole new one, or, for an instant, none. */
function isWhole(edition: string): boolean {
  const own = (all: Record<string, string>): string =>
    JSON.stringify(
      Object.entries(all).filter(([path]) => path.startsWith(`${edition}/`) && !path.endsWith('handout.pdf')),
    );
  return ['[]', own(expected('one')), own(expected('two'))].includes(own(there()));
}

describe('a publish that is stopped', () => {
  it.each([
    ['before a change', false],
    ['in the middle of a file', true],
  ])(
    'killed at any moment, %s, leaves no mixture, and the next publish makes it whole',
    async (_, half) => {
      const changes = await changesOfPublish();
      expect(changes).toBeGreaterThan(20);
      for (let at = 0; at < changes; at++) {
        await prepare();
        Object.assign(trouble, { asked: 0, at, forEver: true, half });
        await writeSite(out, site('two'), both).catch(() => undefined);
        Object.assign(trouble, { at: -1, forEver: false });
        expect([at, isWhole('trainees'), isWhole('staff')]).toEqual([at, true, true]);
        if (lockName in there()) writeFileSync(join(out, lockName), deadProcess);
        put('trainees-notes.txt', 'beside');
        await writeSite(out, site('three'), both);
        const after = there();
        for (const path of Object.keys(after)) if (path.startsWith(`${lockName}.`)) delete after[path];
        expect({ at, ...after }).toEqual({
          at,
          ...expected('three'),
          'trainees/handout.pdf': 'a handout',
          'trainees-notes.txt': 'beside',
        });
        rmSync(out, { recursive: true, force: true });
      }
    },
    60_000,
  );

  it.each([
    ['at once', false],
    ['in the middle of a file', true],
  ])(
    'by a full disk, %s, says so; the old site stays byte for byte, or the new one is there, and nothing lies about',
    async (_, half) => {
      const changes = await changesOfPublish();
      for (let at = 0; at < changes; at++) {
        await prepare();
        const before = there();
        Object.assign(trouble, { asked: 0, at, forEver: false, half });
        const result = await writeSite(out, site('two'), both).catch(
          (error: NodeJS.ErrnoException) => error.code,
        );
        Object.assign(trouble, { at: -1, half: false });
        expect([at, isWhole('trainees'), isWhole('staff')]).toEqual([at, true, true]);
        const untouched = Object.entries(before).every(([path, text]) => there()[path] === text);
        if (result === 'ENOSPC' && untouched)
          expect(Object.keys(there()).filter((path) => path.includes('.new/'))).toEqual([]);
        if (lockName in there()) writeFileSync(join(out, lockName), deadProcess);
        await writeSite(out, site('three'), both);
        const after = there();
        for (const path of Object.keys(after)) if (path.startsWith(`${lockName}.`)) delete after[path];
        expect({ at, ...after }).toEqual({ at, ...expected('three'), 'trainees/handout.pdf': 'a handout' });
        rmSync(out, { recursive: true, force: true });
      }
    },
    60_000,
  );

  it('keeps what somebody put into the old folder after the kill', async () => {
    await prepare();
    mkdirSync(join(out, '.trainees.new'), { recursive: true });
    put('.trainees.new/index.html', 'half built');
    put('.trainees.whole', '');
    put('trainees/late.txt', 'added a week later');
    await writeSite(out, site('two'), both);
    expect(there()).toEqual({
      ...expected('two'),
      'trainees/handout.pdf': 'a handout',
      'trainees/late.txt': 'added a week later',
    });
  });
});

describe('a link that somebody put there', () => {
  const outside = (): string => join(dirname(out), 'outside');
  beforeEach(() => {
    mkdirSync(outside());
    writeFileSync(join(outside(), 'notes.txt'), 'years of work');
  });
  const isUntouched = (): void => expect(there(outside())).toEqual({ 'notes.txt': 'years of work' });

  it('in an edition stays the link that it was, and what it leads to is neither copied nor changed', async () => {
    await writeSite(out, site('one'), both);
    const links = {
      'trainees/folder': '../../outside',
      'trainees/gone': 'nowhere',
      'staff/notes': join(outside(), 'notes.txt'),
    };
    for (const [path, target] of Object.entries(links)) symlinkSync(target, join(out, path));
    await writeSite(out, site('two'), both);
    for (const [path, target] of Object.entries(links)) expect(readlinkSync(join(out, path))).toBe(target);
    expect(there()).toEqual(expected('two'));
    isUntouched();
  });

  it('in the place where a page is built does not lead the writing out of the folder', async () => {
    mkdirSync(out);
    for (const name of ['.index.html.new', '.trainees.new', '.staff.whole'])
      symlinkSync(join(outside(), 'notes.txt'), join(out, name));
    await writeSite(out, site('one'), both);
    expect(there()).toEqual(expected('one'));
    isUntouched();
  });

  it('in place of an edition is replaced, and not what it leads to', async () => {
    await writeSite(outside(), site('one'), both);
    const before = there(outside());
    mkdirSync(out);
    symlinkSync(join(outside(), 'trainees'), join(out, 'trainees'));
    await writeSite(out, site('two'), both);
    expect(lstatSync(join(out, 'trainees')).isDirectory()).toBe(true);
    expect(there()).toEqual(expected('two'));
    expect(there(outside())).toEqual(before);
  });
});
