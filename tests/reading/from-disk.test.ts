import { mkdirSync, mkdtempSync, rmSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loadFolder, readFolder } from '../../src/reading/from-disk.ts';
import { showDiagnostic } from '../../src/showing/diagnostic.ts';

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
