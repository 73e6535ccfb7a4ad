import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadFolder, readFolder } from '../../src/reading/from-disk.ts';
import { showDiagnostic } from '../../src/showing/terminal/diagnostic.ts';

let outside: string;
let folder: string;
beforeEach(() => {
  outside = mkdtempSync(join(tmpdir(), 'reading-'));
  folder = join(outside, 'workspace');
  write('program.yaml', 'name: Skills Room\ncurrency: GBP\ntime-zone: Europe/London\n');
});
afterEach(() => rmSync(outside, { recursive: true }));

function write(file: string, text: string): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
}
const told = async (): Promise<string[]> =>
  (await readFolder(folder)).diagnostics.map(
    ({ code, variant, places: [place] }) => `${code}.${variant} ${place!.file}`,
  );

describe('the folder of a workspace', () => {
  it('gives the program, materials, tools and all that lies beside a guide', async () => {
    write('materials/felt.yaml', 'name: Felt\n');
    write('tools/scale.yaml', 'name: Scale\n');
    write(
      'guides/pad/guide.md',
      '---\ntitle: Pad\nmaterials: []\nsteps: []\n---\n![A pad](photos/pad.jpg)\n',
    );
    write('guides/pad/photos/pad.jpg', 'x');
    write('README.md', 'not read');
    write('results/x/data.csv', 'not read');
    const { files, refused } = await loadFolder(folder);
    expect(refused).toEqual([]);
    expect([...files.keys()].sort()).toEqual([
      'guides/pad/guide.md',
      'guides/pad/photos/pad.jpg',
      'materials/felt.yaml',
      'program.yaml',
      'tools/scale.yaml',
    ]);
    const { workspace, diagnostics } = await readFolder(folder);
    expect(diagnostics).toEqual([]);
    expect(workspace!.guides['pad']!.prose.images[0]!.exists).toBe(true);
  });

  it('passes over names that begin with a dot', async () => {
    write('materials/.DS_Store', 'x');
    write('guides/.draft/guide.md', 'x');
    expect(await told()).toEqual([]);
  });

  it('is read as far as it may go, and what is beyond is told once', async () => {
    for (const id of ['cork', 'felt', 'foam']) write(`materials/${id}.yaml`, `name: ${id}\n`);
    const toldOf = async (most: { files: number; allBytes: number }) => {
      const { files, refused } = await loadFolder(folder, most);
      return [
        [...files.keys()].length,
        refused.map(({ code, variant, places }) => [code, variant, places[0]!.file]),
      ];
    };
    const program = 'name: Skills Room\ncurrency: GBP\ntime-zone: Europe/London\n'.length;
    const two = program + 2 * 'name: cork\n'.length;
    expect(await toldOf({ files: 4, allBytes: two + 11 })).toEqual([4, []]);
    expect(await toldOf({ files: 4, allBytes: two })).toEqual([
      3,
      [['too-many-files', 'bytes', 'materials/foam.yaml']],
    ]);
    expect(await toldOf({ files: 2, allBytes: two })).toEqual([
      2,
      [['too-many-files', undefined, 'program.yaml']],
    ]);
  });

  it('that is not there is told by its name', async () => {
    const { diagnostics } = await readFolder(join(folder, 'nowhere'));
    expect(diagnostics.map(({ code, variant }) => [code, variant])).toEqual([['no-program', 'no-folder']]);
    expect(showDiagnostic(diagnostics[0]!)).toContain('nowhere');
  });

  it('that is a file is told too', async () => {
    const { diagnostics } = await readFolder(join(folder, 'program.yaml'));
    expect(diagnostics.map(({ code }) => code)).toEqual(['no-program']);
  });
});

describe('what leads out of the workspace is not followed', () => {
  it('a link to a file outside, by its own path or by one above it', async () => {
    writeFileSync(join(outside, 'secret.yaml'), 'name: Secret\n');
    mkdirSync(join(folder, 'materials'));
    symlinkSync(join(outside, 'secret.yaml'), join(folder, 'materials/felt.yaml'));
    symlinkSync('../../secret.yaml', join(folder, 'materials/wool.yaml'));
    expect(await told()).toEqual([
      'file-refused.outside materials/felt.yaml',
      'file-refused.outside materials/wool.yaml',
    ]);
    expect((await readFolder(folder)).unread).toEqual(['materials/felt', 'materials/wool']);
  });

  it('a link to a folder, be it outside or inside', async () => {
    write('guides/pad/guide.md', '---\ntitle: Pad\nmaterials: []\nsteps: []\n---\n');
    symlinkSync(join(folder, 'guides/pad'), join(folder, 'guides/copy'));
    symlinkSync(outside, join(folder, 'guides/pad/photos'));
    expect(await told()).toEqual([
      'file-refused.not-a-file guides/copy',
      'file-refused.outside guides/pad/photos',
    ]);
  });

  it('a link that leads nowhere or to itself', async () => {
    mkdirSync(join(folder, 'tools'));
    symlinkSync('gone.yaml', join(folder, 'tools/scale.yaml'));
    symlinkSync('ring.yaml', join(folder, 'tools/ring.yaml'));
    expect(await told()).toEqual([
      'file-refused.unreadable tools/ring.yaml',
      'file-refused.unreadable tools/scale.yaml',
    ]);
  });

  it('a link to a file inside is followed', async () => {
    write('materials/felt.yaml', 'name: Felt\n');
    symlinkSync('felt.yaml', join(folder, 'materials/wool.yaml'));
    expect(Object.keys((await readFolder(folder)).workspace!.materials)).toEqual(['felt', 'wool']);
  });

  it('a guide whose file is refused is not missed as well', async () => {
    writeFileSync(join(outside, 'guide.md'), '---\n---\n');
    mkdirSync(join(folder, 'guides/pad'), { recursive: true });
    symlinkSync(join(outside, 'guide.md'), join(folder, 'guides/pad/guide.md'));
    write('guides/pad/pad.jpg', 'x');
    expect(await told()).toEqual(['file-refused.outside guides/pad/guide.md']);
    expect((await readFolder(folder)).unread).toEqual(['guides/pad']);
  });
});

describe('what lies beside a module', () => {
  const matter = (more: string) =>
    `---\ntitle: First\nobjectives: []\ncohort:\n  people: [{ id: trainees, count: 4 }]\n${more}---\n`;

  it('is taken from its own folder alone: no link, way up or absolute path leads to another file', async () => {
    writeFileSync(join(outside, 'secret.mp4'), 'secret');
    const names = ['film.mp4', '../../../secret.mp4', join(outside, 'secret.mp4'), '../second/film.mp4'];
    const prepare = names.map((name) => `  - { watch: ${JSON.stringify(name)}, text: words.vtt }\n`).join('');
    write('modules/first/module.md', matter(`prepare:\n${prepare}`));
    write('modules/second/module.md', matter(''));
    write('modules/second/film.mp4', 'of the second');
    symlinkSync(join(outside, 'secret.mp4'), join(folder, 'modules/first/film.mp4'));
    symlinkSync('../second/film.mp4', join(folder, 'modules/first/words.vtt'));
    expect(await told()).toEqual(['file-refused.outside modules/first/film.mp4']);
    const { files } = await readFolder(folder);
    expect(Object.keys(files).sort()).toEqual(['modules/first/words.vtt', 'modules/second/film.mp4']);
    expect(JSON.stringify(Object.values(files).map((bytes) => Buffer.from(bytes).toString()))).not.toContain(
      'secret',
    );
  });

  it('may be a table of judges, but not one that a link brings from outside', async () => {
    writeFileSync(join(outside, 'judges.csv'), 'judge,a\nj,0.5\n');
    const pass = '{ method: angoff, judges: judges.csv, on: 2026-10-01 }';
    const scoring = `scoring:\n  items: [{ id: a, says: A, weight: 1, critical: no, objectives: [] }]\n  pass: ${pass}\n`;
    write('modules/first/module.md', matter(scoring));
    symlinkSync(join(outside, 'judges.csv'), join(folder, 'modules/first/judges.csv'));
    expect(await told()).toEqual(['file-refused.outside modules/first/judges.csv']);
    const { scoring: read } = (await readFolder(folder)).workspace!.modules['first']!;
    expect(read!.pass).not.toHaveProperty('judged');
  });

  it('is a regular file: no device, pipe or socket is opened, and none keeps the reading waiting', async () => {
    write('modules/first/module.md', matter(''));
    symlinkSync('/dev/zero', join(folder, 'modules/first/film.mp4'));
    expect(spawnSync('mkfifo', [join(folder, 'modules/first/judges.csv')]).status).toBe(0);
    const socket = createServer().listen(join(folder, 'modules/first/talk.mp4'));
    await once(socket, 'listening');
    expect(await told()).toEqual([
      'file-refused.outside modules/first/film.mp4',
      'file-refused.not-a-file modules/first/judges.csv',
      'file-refused.not-a-file modules/first/talk.mp4',
    ]);
    socket.close();
  });

  it('may differ from another by its capitals alone, or have the longest name that a disk takes', async () => {
    write('modules/first/module.md', matter(''));
    const names = ['Film.mp4', 'film.mp4', `${'x'.repeat(251)}.mp4`, 'con.mp4', 'a\\b.mp4', '%2e%2e%2fc.mp4'];
    for (const name of names) write(`modules/first/${name}`, name);
    expect(await told()).toEqual([]);
    const { files } = await readFolder(folder);
    expect(Object.keys(files).sort()).toEqual(names.map((name) => `modules/first/${name}`).sort());
  });
});

it('folders in folders without end are passed over, and those before them are read', async () => {
  write(`guides/pad/${'a/'.repeat(15)}near.jpg`, 'x');
  write(`guides/pad/${'a/'.repeat(60)}far.jpg`, 'x');
  expect([...(await loadFolder(folder)).files.keys()].filter((file) => file.endsWith('.jpg'))).toEqual([
    `guides/pad/${'a/'.repeat(15)}near.jpg`,
  ]);
});

it('a file of more than 20 MB is not read', async () => {
  write('guides/pad/film.mov', 'x');
  truncateSync(join(folder, 'guides/pad/film.mov'), 20_000_001);
  expect(await told()).toContain('file-refused.too-large guides/pad/film.mov');
});

it('every refusal has a sentence', async () => {
  mkdirSync(join(folder, 'tools'));
  for (const [name, target] of [
    ['a', outside],
    ['b', 'gone'],
    ['c', folder],
  ])
    symlinkSync(target!, join(folder, `tools/${name}.yaml`));
  const { diagnostics } = await readFolder(folder);
  expect(diagnostics.map(showDiagnostic).every((text) => text.endsWith('error, file-refused'))).toBe(true);
});
