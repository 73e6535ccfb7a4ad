import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { benchwright, folderWith, soundWorkspace } from './on-a-bench.ts';

const sound = folderWith(soundWorkspace);
const withoutUnit = folderWith({
  ...soundWorkspace,
  'materials/cord.yaml': soundWorkspace['materials/cord.yaml']!.replace('5 m', '5 cups'),
});

describe('check', () => {
  it('ends with 0 where everything adds up, whatever it warns of', async () => {
    const { status, err } = await benchwright(['check', sound]);
    expect([status, err]).toEqual([0, '']);
  });

  it('counts what there is where nothing is to be said', async () => {
    const { out } = await benchwright(['check', resolve('content/quillmoor'), '--today', '2026-11-25']);
    expect(out).toBe('6 guides, 4 modules, 45 materials and 31 tools: everything is there and adds up.\n');
  });

  it('tells an error on standard output, by file and line, and ends with 1', async () => {
    const { status, out, err } = await benchwright(['check', withoutUnit]);
    expect(out).toContain('materials/cord.yaml:4:');
    expect(out).toContain('error, unit-system-missing');
    expect(out).toMatch(/^1 error( and \d+ warnings?)?\.\n$/m);
    expect([status, err]).toEqual([1, '']);
  });

  it('ends with 1 where program.yaml itself cannot be read', async () => {
    const { status, out } = await benchwright(['check', folderWith({ 'program.yaml': 'name: [' })]);
    expect(out).toContain('program.yaml:1:');
    expect(status).toBe(1);
  });

  it('writes JSON for other programs', async () => {
    const { status, out } = await benchwright(['check', withoutUnit, '--format', 'json']);
    const { format, counts, findings } = JSON.parse(out) as {
      format: string;
      counts: { error: number };
      findings: {
        code: string;
        severity: string;
        message: string;
        places: { file: string; line: number }[];
      }[];
    };
    expect([format, counts.error, status]).toEqual(['benchwright-findings/1', 1, 1]);
    const found = findings.find(({ code }) => code === 'unit-system-missing')!;
    expect(found).toMatchObject({ severity: 'error', places: [{ file: 'materials/cord.yaml', line: 4 }] });
    expect(found.message).toContain('US');
  });

  it('takes today from --today, else from SOURCE_DATE_EPOCH, else from the clock', async () => {
    const oldPrice = /price-old|old/;
    const at = async (args: string[], environment = {}) =>
      (await benchwright(['check', sound, ...args], { environment })).out;
    const [now, later] = [await at(['--today', '2026-11-25']), await at(['--today', '2036-11-25'])];
    expect(later).not.toBe(now);
    expect(later).toMatch(oldPrice);
    expect(await at([])).toBe(now);
    // 2036-11-25T12:00Z
    expect(await at([], { SOURCE_DATE_EPOCH: '2111227200' })).toBe(later);
    expect(await at(['--today', '2026-11-25'], { SOURCE_DATE_EPOCH: '2111227200' })).toBe(now);
  });

  it('colours a terminal, and nothing else', async () => {
    const escape = '\u001B[';
    const withColour = await benchwright(['check', withoutUnit], { isTerminal: true });
    expect(withColour.out).toContain(escape);
    for (const environment of [{ NO_COLOR: '1' }, { TERM: 'dumb' }]) {
      const { out } = await benchwright(['check', withoutUnit], { isTerminal: true, environment });
      expect(out).not.toContain(escape);
    }
    const { out, err } = await benchwright(['check', withoutUnit]);
    expect(out + err).not.toContain(escape);
  });
});
