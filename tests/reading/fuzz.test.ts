import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { ReadWorkspace } from '../../src/reading/read.ts';
import { showDiagnostic } from '../../src/showing/diagnostic.ts';
import { findingsOf } from '../cases/workspace-of-case.ts';
import { baseFiles, guideFile, readWith, textOf } from './base-workspace.ts';

/** Pieces that stand for much in YAML or Markdown, and some that look like values. */
const piece = fc.oneof(
  fc.constantFrom(
    ...[
      '\n',
      ' ',
      '\t',
      ':',
      ': ',
      '- ',
      '#',
      ' #x',
      '---\n',
      '...\n',
      '"',
      "'",
      '[',
      ']',
      '{',
      '}',
      ',',
      '*',
      '&a ',
      '*a',
      '!t ',
    ],
    ...[
      '? ',
      '| ',
      '>\n',
      '<<: ',
      '__proto__: ',
      'constructor: ',
      '%',
      '@',
      '`',
      '<b>',
      '![',
      '](',
      '\\',
      '~',
      '=\n',
      '|-|\n',
    ],
    ...[
      'shallow: ',
      'deep: ',
      'usual: ',
      'once: ',
      'each: ',
      'as: ',
      'if-damp: ',
      '1,5',
      '1 cup',
      '12:30',
      '0',
      '-1',
      '1e9',
      '2026-02-30',
    ],
    ...['\r', '\r\n', '\0', '\u202e', '\ufeff', '\u00a0', '½', '🧪', 'é', '\n\n## Pour\n', '\n  ', '\n    '],
  ),
  fc.string({ unit: 'binary', maxLength: 6 }),
);

/** The base guide with some pieces put in, some stretches taken out, at any place. */
function mangled(text: string): fc.Arbitrary<string> {
  const cut = fc.record({ at: fc.nat(text.length), drop: fc.oneof(fc.constant(0), fc.nat(40)), put: piece });
  return fc
    .array(cut, { minLength: 1, maxLength: 4 })
    .map((cuts) =>
      cuts.reduce((now, { at, drop, put }) => now.slice(0, at) + put + now.slice(at + drop), text),
    );
}

/** Every message can be shown, and stands where there is something. */
function expectTold({ diagnostics, workspace, unread }: ReadWorkspace): void {
  for (const diagnostic of diagnostics) {
    expect(showDiagnostic(diagnostic)).not.toMatch(/undefined|\[object|NaN/);
    for (const { line, column, length } of diagnostic.places)
      expect(Math.min(line, column, length)).toBeGreaterThan(0);
  }
  if (diagnostics.length === 0) expect(workspace && unread.length === 0).toBe(true);
}

it('a mangled guide is read or told about, and never stops the reading', () => {
  fc.assert(
    fc.property(mangled(textOf(guideFile)), (text) => expectTold(readWith({ [guideFile]: text }))),
    { numRuns: 100 },
  );
});

it.each(['program.yaml', 'materials/gelatin-powder.yaml', 'tools/scale.yaml'])(
  'so is a mangled %s',
  (file) => {
    fc.assert(
      fc.property(mangled(textOf(file)), (text) => expectTold(readWith({ [file]: text }))),
      { numRuns: 40 },
    );
  },
);

it('so are random bytes, in front matter and in prose', () => {
  const bytes = fc.uint8Array({ maxLength: 200 });
  fc.assert(
    fc.property(bytes, bytes, (matter, prose) => {
      const fence = new TextEncoder().encode('---\n');
      expectTold(readWith({ [guideFile]: new Uint8Array([...fence, ...matter, 0x0a, ...fence, ...prose]) }));
      expectTold(readWith({ [guideFile]: matter, 'program.yaml': prose }));
    }),
    { numRuns: 15 },
  );
});

it('the same folder read twice says the same', () => {
  fc.assert(
    fc.property(mangled(textOf(guideFile)), (text) => {
      const [first, second] = [readWith({ [guideFile]: text }), readWith({ [guideFile]: text })];
      expect(second.diagnostics).toEqual(first.diagnostics);
      expect(JSON.stringify(second.workspace)).toBe(JSON.stringify(first.workspace));
    }),
    { numRuns: 15 },
  );
});

/** Values that are read without complaint where they do not belong, or nearly. */
const oddValue = fc.constantFrom(
  ...[
    '0',
    '1',
    '5 g',
    '1 L',
    '12',
    '1000000000000 g',
    '99999 d',
    '0 min',
    'shallow',
    'pour',
    'gel',
    '[]',
    '{}',
  ],
  ...[
    '[pour]',
    '[gel]',
    'the batch',
    'every 10000 models',
    'no',
    'yes',
    '1 in',
    '10 mm x 20 mm',
    '1/3',
    '60 °C',
  ],
  ...[
    '{ shallow: 5 g, deep: 1 kg }',
    '{ usual: 1 h, if-damp: 2 h }',
    '{ unmould: 10 min }',
    '{ as: label.full }',
  ],
);

it('a guide with odd values in place of its own is checked to the end', () => {
  const lines = textOf(guideFile).split('\n');
  const change = fc.tuple(fc.nat(lines.length - 1), oddValue);
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
      const odd = [...lines];
      for (const [at, value] of changes) odd[at] = odd[at]!.replace(/: .*$/, `: ${value}`);
      const files = new Map([...baseFiles, [guideFile, new TextEncoder().encode(odd.join('\n'))]]);
      for (const finding of findingsOf(files))
        expect(showDiagnostic(finding)).not.toMatch(/undefined|\[object|NaN/);
    }),
    { numRuns: 100 },
  );
});
