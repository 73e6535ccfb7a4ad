import { describe, expect, it } from 'vitest';
import { codesOf, guideFile, readGuide, readWith, textOf } from './base-workspace.ts';

const canary = (): unknown => (globalThis as Record<string, unknown>)['canary'];
const whole = textOf(guideFile);

describe('front matter opens with three dashes and nothing else', () => {
  it.each(['js', 'javascript', 'coffee', 'json', 'toml', ' js', ' yaml', ' '])(
    'so “---%s” runs nothing and is refused',
    (language) => {
      const script = `---${language}\n{ title: (globalThis.canary = true, 'x') }\n---\n`;
      expect(codesOf(readWith({ [guideFile]: script }))).toEqual(['front-matter-fence.opening']);
      expect(canary()).toBeUndefined();
    },
  );

  it('with four dashes it is none', () => {
    expect(codesOf(readWith({ [guideFile]: `-${whole}` }))).toEqual(['front-matter-fence.opening']);
  });

  it('with a line before it it is none', () => {
    expect(codesOf(readWith({ [guideFile]: `\n${whole}` }))).toEqual(['front-matter-fence.none']);
  });

  it('an unclosed one does not swallow the prose', () => {
    expect(codesOf(readWith({ [guideFile]: whole.replace('\n---\n', '\n') }))).toEqual([
      'front-matter-fence.unclosed',
    ]);
  });

  it('an empty one is told about', () => {
    expect(codesOf(readWith({ [guideFile]: '---\n---\n# Prose\n' }))).toEqual([
      'front-matter-unreadable.empty',
    ]);
  });
});

describe('what a keyboard or an editor does', () => {
  it('a byte order mark, CRLF and a missing last newline are fine, and change no value', () => {
    const other = `\ufeff${whole.replaceAll('\n', '\r\n').trimEnd()}`;
    const [plain, windows] = [readWith({}), readWith({ [guideFile]: other })];
    expect(windows.diagnostics).toEqual([]);
    expect(windows.workspace).toEqual(plain.workspace);
  });

  it('lines and columns are those of the file, with CRLF too', () => {
    const file = textOf('materials/label.yaml').replace('form: count', 'form: x').replaceAll('\n', '\r\n');
    const [found] = readWith({ 'materials/label.yaml': file }).diagnostics;
    expect(found!.places[0]).toEqual({
      file: 'materials/label.yaml',
      line: 2,
      column: 7,
      length: 1,
      text: 'form: x',
    });
  });

  it('a comment proper is fine, at the end of a line and on its own', () => {
    expect(
      readGuide('lasts: 8 uses   # from our trial\n# more\nmaterials: [] # none\nsteps: []\n').diagnostics,
    ).toEqual([]);
  });

  it('a .yaml file may begin with three dashes', () => {
    expect(readWith({ 'materials/felt.yaml': '---\nname: Felt\n' }).diagnostics).toEqual([]);
  });

  it('a text over several lines is one text', () => {
    const { workspace } = readGuide(
      'summary: >-\n  one\n  two\ntrains: |\n  three\nmaterials: []\nsteps: []\n',
    );
    expect(workspace!.guides['small']).toMatchObject({ summary: 'one two', trains: 'three' });
  });

  it('a quoted text may hold what a bare one may not', () => {
    const { workspace } = readGuide('summary: "needle #18: two, three"\nmaterials: []\nsteps: []\n');
    expect(workspace!.guides['small']!.summary).toBe('needle #18: two, three');
  });
});

describe('faults beside one another', () => {
  it('a cut text and a mistyped amount of one file are told in one run', () => {
    const matter =
      'summary: needle #18\nmaterials:\n  - use: label\n    amount: some\nsteps: []\nlasts: 8 uses\nlasts: 9 uses\n';
    expect(codesOf(readGuide(matter)).toSorted()).toEqual([
      'amount-unreadable',
      'repeated-key',
      'text-cut-short',
    ]);
  });

  it('a row of the wrong kind leaves the places of the others right', () => {
    const matter = 'materials:\n  - label\n  - use: label\n    amount: some\nsteps: []\n';
    const found = readGuide(matter).diagnostics.map(({ code, places: [place] }) => [code, place!.line]);
    expect(found).toEqual([
      ['wrong-kind', 4],
      ['amount-unreadable', 6],
    ]);
  });
});

describe('what nobody sees', () => {
  it.each(['"a\\u202eb"', '"a\\0b"', '"a\\x07b"', '"\\ud800"', '"a\\u2028b"', '"a\\rb"', '"\\ufeffa"'])(
    'does not come in by an escape, %s',
    (text) => {
      const { diagnostics, workspace } = readGuide(`summary: ${text}\nmaterials: []\nsteps: []\n`);
      expect(diagnostics.map(({ code, places: [place] }) => [code, place!.line])).toEqual([
        ['hidden-character', 3],
      ]);
      expect('small' in workspace!.guides).toBe(false);
    },
  );

  it('is not a line end or a tab', () => {
    const { diagnostics, workspace } = readGuide('summary: "a\\nb\\tc"\nmaterials: []\nsteps: []\n');
    expect([diagnostics, workspace!.guides['small']!.summary]).toEqual([[], 'a\nb\tc']);
  });
});
