import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { benchwright, folderWith, soundWorkspace } from './on-a-bench.ts';

const wordsOf = (text: string) => text.trim().split('\n');

describe('publish', () => {
  it('writes both editions side by side, and says where', async () => {
    const folder = folderWith(soundWorkspace);
    const { status, out } = await benchwright(['publish', '--out', 'public'], { folder });
    expect(wordsOf(out).map((line) => line.replace(/\d+/, 'N'))).toEqual([
      'trainees: N files in public/trainees',
      'staff: N files in public/staff',
      'Open public/index.html in a browser.',
    ]);
    expect(readFileSync(join(folder, 'public/trainees/index.html'), 'utf8')).toContain('Knot board');
    expect(existsSync(join(folder, 'public/staff/index.html'))).toBe(true);
    expect(status).toBe(0);
  });

  it('writes one edition alone', async () => {
    const folder = folderWith(soundWorkspace);
    await benchwright(['publish', '--edition', 'trainees'], { folder });
    expect(existsSync(join(folder, 'site/trainees/index.html'))).toBe(true);
    expect(existsSync(join(folder, 'site/staff'))).toBe(false);
  });

  it('writes nothing where there is an error', async () => {
    const folder = folderWith({ ...soundWorkspace, 'materials/cord.yaml': 'name: Cord\nform: string\n' });
    const { status, out, err } = await benchwright(['publish'], { folder });
    expect(err).toContain('error, ');
    expect(err).toContain('Nothing was written: the workspace has errors.');
    expect([status, out, existsSync(join(folder, 'site'))]).toEqual([1, '', false]);
  });

  it('is not put among the content, where its files would be read as guides', async () => {
    const folder = folderWith(soundWorkspace);
    const { status, out, err } = await benchwright(['publish', '--out', 'guides/site'], { folder });
    expect(wordsOf(err).join(' ')).toContain(
      '--out guides/site is among the guides of the workspace, where the files of the site would be read as content.',
    );
    expect([status, out, existsSync(join(folder, 'guides/site'))]).toEqual([2, '', false]);
  });

  it('leaves a folder alone that it did not make', async () => {
    const folder = folderWith({ ...soundWorkspace, 'site/trainees/mine.txt': 'mine' });
    const { status, out, err } = await benchwright(['publish'], { folder });
    expect(err).toContain('error, folder-not-ours');
    expect([status, out]).toEqual([2, '']);
    expect(readFileSync(join(folder, 'site/trainees/mine.txt'), 'utf8')).toBe('mine');
    expect(readdirSync(join(folder, 'site/trainees'))).toEqual(['mine.txt']);
  });
});
