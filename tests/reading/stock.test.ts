import { describe, expect, it } from 'vitest';
import { readStock } from '../../src/reading/stock.ts';
import { showDiagnostic } from '../../src/showing/terminal/diagnostic.ts';
import { planJson } from '../../src/exports/plan-json.ts';
import {
  aGuide,
  aMaterial,
  aPiece,
  aRow,
  aStep,
  aWorkspace,
  inOrder,
  pack,
  planOf,
} from '../core/plan/a-workspace.ts';

const workspace = aWorkspace({
  materials: [
    aMaterial('felt', { form: 'sheet', packs: [pack('450 mm x 300 mm', '2 GBP')] }),
    aMaterial('powder', { packs: [pack('500 g', '6 GBP')] }),
    aMaterial('rod', { form: 'length', packs: [pack('1 m', '2 GBP')] }),
  ],
  guides: [
    aGuide('block', {
      levels: [
        { id: 'shallow', name: 'Shallow', usual: true },
        { id: 'deep', name: 'Deep', usual: false },
      ],
      parts: [{ id: 'skin', name: 'Skin' }],
      materials: [aRow('felt', undefined, { pieces: [aPiece('skin', '150 mm x 100 mm')] })],
      steps: inOrder(aStep('melt', '5 min'), aStep('pour', '5 min')),
    }),
  ],
});

const read = (text: string) => readStock('stock.yaml', new TextEncoder().encode(text), workspace);
const size = (width: string, length: string) => ({
  sides: [
    { value: width, unit: 'mm' },
    { value: length, unit: 'mm' },
  ],
});

describe('a stock file', () => {
  it.each([
    ['an amount', 'powder: 240 g', { powder: { value: '240', unit: 'g' } }],
    ['nothing', 'powder: 0 g', { powder: { value: '0', unit: 'g' } }],
    ['sheets', 'felt: 2 x 450 mm x 300 mm', { felt: { pieces: [{ count: 2, each: size('450', '300') }] } }],
    [
      'sheets and offcuts',
      'felt: [450 mm x 300 mm, 2 x 120 mm x 300 mm]',
      {
        felt: {
          pieces: [
            { count: 1, each: size('450', '300') },
            { count: 2, each: size('120', '300') },
          ],
        },
      },
    ],
    [
      'rods',
      'rod: [3 x 1 m, 400 mm]',
      {
        rod: {
          pieces: [
            { count: 3, each: { value: '1', unit: 'm' } },
            { count: 1, each: { value: '400', unit: 'mm' } },
          ],
        },
      },
    ],
  ])('says %s', (_, text, stock) => {
    expect(read(text)).toEqual({ stock, finished: [] });
  });

  it('takes a bare 0 for none of it, however it is sold', () => {
    expect(read('rod: 0')).toEqual({ stock: {}, finished: [] });
  });

  it('lists models that are finished, or on their way', () => {
    const text = [
      'models:',
      '  - { guide: block, level: deep, count: 3, past: { pour: 4 } }',
      '  - { guide: block, part: skin, count: 2 }',
    ].join('\n');
    expect(read(text)).toEqual({
      stock: {},
      finished: [
        { guide: 'block', level: 'deep', models: 3, past: [{ step: 'pour', models: 4 }] },
        { guide: 'block', part: 'skin', models: 2, past: [] },
      ],
    });
  });

  it.each([
    ['felt: [450 mm x 300 mm, 3 g]', 'stock-not-comparable', 'stock.yaml:1:25'],
    ['felts: 2 x 450 mm x 300 mm', 'stock-unknown', '“felt” comes'],
    ['felt: [450 mm x 300 mm x 3 mm]', 'amount-unreadable', 'stock.yaml:1:8'],
    ['models:\n  - { guide: blok, count: 1 }', 'stock-unknown-guide', 'guide: block'],
    ['models:\n  - { guide: sphere, count: 1 }', 'stock-unknown-guide', 'Its guides: block.'],
    ['models:\n  - { guide: block, level: depe, count: 1 }', 'stock-unknown-level', 'level: deep'],
    [
      'models:\n  - { guide: block, level: 3, count: 1 }',
      'stock-unknown-level',
      'Its levels: shallow, deep.',
    ],
    ['models:\n  - { guide: block, part: skn, count: 1 }', 'stock-unknown-part', 'part: skin'],
    ['models:\n  - { guide: block, past: { por: 4 } }', 'stock-unknown-step', 'pour:'],
    ['models:\n  - { guide: block, past: { bake: 4 } }', 'stock-unknown-step', 'Its steps: melt, pour.'],
    ['models:\n  - { guide: block, count: 1.5 }', 'amount-not-whole', 'stock.yaml:2:'],
    ['models:\n  - { guide: block, counts: 1 }', 'unknown-key', 'count:'],
    ['models:\n  - { count: 1 }', 'missing-key', 'guide: …'],
    ['models: 3', 'wrong-kind', 'stock.yaml:1:9'],
  ])('%j is told as %s', (text, code, part) => {
    const answer = read(text);
    if (!('refused' in answer)) throw new Error('it was read');
    expect(answer.refused.map((one) => one.code)).toEqual([code]);
    expect(showDiagnostic(answer.refused[0]!)).toContain(part);
  });

  it('can be made of what a plan leaves over', () => {
    // nine pieces of 150 x 100 fill a sheet: the tenth leaves a strip of the second, 450 mm x 200 mm or 450 mm x 150 mm
    const plan = planOf(workspace, [{ guide: 'block', wanted: 10 }], { effort: '1/1000' });
    const left = planJson(plan, workspace).purchases.map(({ material, left: rest }) => [material, rest]);
    const stock = read(JSON.stringify(Object.fromEntries(left)));
    if ('refused' in stock) throw new Error('it was refused');
    const next = planOf(workspace, [{ guide: 'block', wanted: 3 }], { effort: '1/1000', stock: stock.stock });
    expect(next.purchases[0]!.packs).toEqual([]);
  });
});
