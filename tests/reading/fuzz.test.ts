import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readMoney } from '../../src/core/money/read-money.ts';
import { readAmount } from '../../src/core/quantity/read-amount.ts';
import { readShare } from '../../src/core/quantity/read-number.ts';
import { readSize } from '../../src/core/quantity/read-size.ts';
import { readDuration } from '../../src/core/time/duration.ts';
import type { ReadWorkspace } from '../../src/reading/read.ts';
import { readStock } from '../../src/reading/stock.ts';
import { showDiagnostic } from '../../src/showing/terminal/diagnostic.ts';
import { findingsOf } from '../cases/workspace-of-case.ts';
import { baseFiles, guideFile, moduleFile, readWith, textOf } from './base-workspace.ts';

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
    { numRuns: 50 },
  );
});

it('so is a mangled module', () => {
  fc.assert(
    fc.property(mangled(textOf(moduleFile)), (text) => expectTold(readWith({ [moduleFile]: text }))),
    { numRuns: 50 },
  );
});

it('so is a mangled table of judges, by each method', () => {
  const tables = {
    angoff: 'judge,tip-in-view\nj1,0.7\nj2,80 %\n',
    'borderline-regression': 'person;rating;points\np1;1;0\np2;2;1\np3;3;2\n',
    'contrasting-groups': 'person,ready,points\n1,no,0\n2,no,1\n3,yes,2\n4,yes,1\n',
  };
  for (const [method, table] of Object.entries(tables)) {
    const pass = `    method: ${method}\n    judges: judges.csv\n    on: 2026-10-01\n`;
    const module = textOf(moduleFile).replace('    none-set: yes\n', pass);
    const readTable = (judges: string | Uint8Array) =>
      readWith({ [moduleFile]: module, 'modules/first-access/judges.csv': judges });
    expect(readTable(table).diagnostics).toEqual([]);
    const bytes = fc.uint8Array({ maxLength: 100 });
    fc.assert(
      fc.property(mangled(table), bytes, (text, random) => {
        expectTold(readTable(text));
        expectTold(readTable(random));
      }),
      { numRuns: 10 },
    );
  }
});

it('so is a mangled stock file', () => {
  const { workspace } = readWith({});
  const text =
    'gelatin-powder: 240 g\nlabel: 3\nmodels:\n  - { guide: needle-block, level: deep, count: 3 }\n';
  const bytes = fc.uint8Array({ maxLength: 100 }).map((random) => new TextDecoder().decode(random));
  fc.assert(
    fc.property(fc.oneof(mangled(text), bytes), (stock) => {
      const found = readStock('stock.yaml', new TextEncoder().encode(stock), workspace!);
      if ('refused' in found)
        for (const refusal of found.refused)
          expect(showDiagnostic(refusal)).not.toMatch(/undefined|\[object|NaN/);
      else expect(Object.keys(found.stock).every((id) => id in workspace!.materials)).toBe(true);
    }),
    { numRuns: 300 },
  );
});

it.each([
  ['an amount', (text: string) => readAmount(text)],
  ['a size', readSize],
  ['a share', readShare],
  ['a time', readDuration],
  ['money', readMoney],
])('any text is %s or a refusal, and a number only where one was written', (_, reader) => {
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 12 }),
    fc.array(piece).map((all) => all.join('')),
  );
  fc.assert(
    fc.property(text, (written) => {
      const reading = reader(written);
      if (reading.ok) expect(written).toMatch(/\p{N}/u);
      else expect(JSON.stringify(reading)).not.toMatch(/NaN|Infinity/);
    }),
    { numRuns: 2000 },
  );
});

it.each(['program.yaml', 'materials/gelatin-powder.yaml', 'tools/scale.yaml'])(
  'so is a mangled %s',
  (file) => {
    fc.assert(
      fc.property(mangled(textOf(file)), (text) => expectTold(readWith({ [file]: text }))),
      { numRuns: 25 },
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

it.each([
  ['guide', guideFile],
  ['module', moduleFile],
])('a %s with odd values in place of its own is checked to the end', (_, file) => {
  const lines = textOf(file).split('\n');
  const change = fc.tuple(fc.nat(lines.length - 1), oddValue);
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
      const odd = [...lines];
      for (const [at, value] of changes) odd[at] = odd[at]!.replace(/: .*$/, `: ${value}`);
      const files = new Map([...baseFiles, [file, new TextEncoder().encode(odd.join('\n'))]]);
      for (const finding of findingsOf(files))
        expect(showDiagnostic(finding)).not.toMatch(/undefined|\[object|NaN/);
    }),
    { numRuns: 50 },
  );
});
