import { describe, expect, it } from 'vitest';
import type { Guide } from '../../src/core/model/guide.ts';
import { codesOf, readGuide } from './base-workspace.ts';

const levels = 'levels:\n  - id: shallow\n  - id: deep\n';
const parts = 'parts:\n  - id: frame\n    lasts: 500 uses\n';
const tools = 'tools:\n  - use: loaf-tin\n';

/** A guide with one step that has these keys. */
function stepWith(keys: string, matter = levels) {
  const found = readGuide(
    `${matter}materials: []\nsteps:\n  - id: press\n    ${keys.replaceAll('\n', '\n    ')}\n`,
    '## Press\n',
  );
  return { step: found.workspace?.guides['small']?.steps[0], codes: codesOf(found) };
}
const hours = (n: number) => ({ seconds: String(n * 3600) });
const minutes = (n: number) => ({ seconds: String(n * 60) });

describe('what a run serves, as people type it', () => {
  it.each<[string, Guide['steps'][number]['for']]>([
    ['each model', { per: 'model' }],
    ['each', { per: 'model' }],
    ['model', { per: 'model' }],
    ['per model', { per: 'model' }],
    ['every model', { per: 'model' }],
    ['Each Model', { per: 'model' }],
    ['every 6 models', { per: 'every', models: 6 }],
    ['every 6', { per: 'every', models: 6 }],
    ['every 1 model', { per: 'every', models: 1 }],
    ['the batch', { per: 'batch' }],
    ['batch', { per: 'batch' }],
    ['the whole batch', { per: 'batch' }],
    ['each frame', { per: 'part', part: 'frame' }],
    ['each loaf-tin', { per: 'tool', tool: 'loaf-tin' }],
    ['each loaf tin', { per: 'tool', tool: 'loaf-tin' }],
  ])('%s', (text, basis) => {
    expect(stepWith(`for: ${text}`, parts + tools)).toMatchObject({ step: { for: basis }, codes: [] });
  });

  it.each(['every 0 models', 'every 10001 models', 'each mould', 'every 2.5 models'])('not %s', (text) => {
    expect(stepWith(`for: ${text}`, parts + tools).codes[0]).toMatch(/^basis-unknown/);
  });
});

describe('hands-on time', () => {
  const none = { seconds: '0' };
  it.each([
    ['hands-on: 10 min', { once: minutes(10), each: none }],
    ['hands-on: { once: 4 min, each: 1 min }', { once: minutes(4), each: minutes(1) }],
    ['hands-on: { each: 1 min }', { once: none, each: minutes(1) }],
    [
      'hands-on: { shallow: 10 min, deep: 20 min }',
      {
        once: { byLevel: { shallow: minutes(10), deep: minutes(20) } },
        each: { byLevel: { shallow: none, deep: none } },
      },
    ],
    [
      'hands-on: { once: { shallow: 1 min, deep: 2 min }, each: 1 min }',
      { once: { byLevel: { shallow: minutes(1), deep: minutes(2) } }, each: minutes(1) },
    ],
    [
      'hands-on: { shallow: 10 min, deep: { once: 20 min, each: 2 min } }',
      {
        once: { byLevel: { shallow: minutes(10), deep: minutes(20) } },
        each: { byLevel: { shallow: none, deep: minutes(2) } },
      },
    ],
  ])('%s', (keys, handsOn) => {
    expect(stepWith(keys)).toMatchObject({ step: { handsOn }, codes: [] });
  });
});

describe('a wait', () => {
  it.each([
    ['wait: 20 min', { usual: minutes(20), ifRoom: {} }],
    ['wait: PT2H', { usual: hours(2), ifRoom: {} }],
    ['wait: { usual: 12 h, if-damp: 24 h }', { usual: hours(12), ifRoom: { damp: hours(24) } }],
    [
      'wait: { as: glue.full, if-damp: 24 h }',
      { usual: { material: 'glue', time: 'full' }, ifRoom: { damp: hours(24) } },
    ],
    [
      'wait: { usual: { as: glue.full }, if-cold: 2 h }',
      { usual: { material: 'glue', time: 'full' }, ifRoom: { cold: hours(2) } },
    ],
    [
      'wait: { shallow: 12 h, deep: { as: glue.full } }',
      { usual: { byLevel: { shallow: hours(12), deep: { material: 'glue', time: 'full' } } }, ifRoom: {} },
    ],
    [
      'wait: { shallow: { usual: 12 h, if-damp: 24 h }, deep: 16 h }',
      {
        usual: { byLevel: { shallow: hours(12), deep: hours(16) } },
        ifRoom: { damp: { byLevel: { shallow: hours(24), deep: hours(16) } } },
      },
    ],
  ])('%s', (keys, wait) => {
    expect(stepWith(keys)).toMatchObject({ step: { wait }, codes: [] });
  });

  it.each([
    ['wait: { usual: 12 h, if-wet: 24 h }', ['unknown-key']],
    ['wait: { if-damp: 24 h }', ['missing-key.usual']],
    ['wait: { shallow: 12 h }', ['level-missing']],
    ['wait: { shallow: 12 h, dep: 16 h }', ['level-unknown.near']],
    ['wait: { wide: 12 h }', ['level-unknown']],
    ['wait: [12 h]', ['wrong-kind.text']],
    ['wait: {}', ['wrong-kind.text']],
    ['wait: { as: glue }', ['directions-time-unreadable']],
  ])('not %s', (keys, codes) => {
    expect(stepWith(keys).codes).toEqual(codes);
  });
});

describe('a hold limit', () => {
  it.each([
    ['use-within: 45 min', { any: minutes(45), byStep: {} }],
    [
      'use-within: { shallow: 10 min, deep: 20 min }',
      { any: { byLevel: { shallow: minutes(10), deep: minutes(20) } }, byStep: {} },
    ],
    [
      'use-within: { pour: 10 min, lay: { shallow: 5 min, deep: 6 min } }',
      { byStep: { pour: minutes(10), lay: { byLevel: { shallow: minutes(5), deep: minutes(6) } } } },
    ],
  ])('%s', (keys, useWithin) => {
    expect(stepWith(keys)).toMatchObject({ step: { useWithin }, codes: [] });
  });
});

describe('places, uses and settings of a step', () => {
  it('a bare number waits per model, “a run” per run', () => {
    expect(stepWith('waits-at: { fridge-shelf: 2, stove: 1 a run }').step!.waitsAt).toEqual({
      'fridge-shelf': { count: 2, per: 'model' },
      stove: { count: 1, per: 'run' },
    });
  });

  it('a use is a name, of another guide’s model too, or a name with an amount or pieces', () => {
    expect(
      stepWith(
        'uses: [gel, guide:vessel, { material: water, amount: 600 mL }, { material: felt, pieces: [skin] }]',
      ).step!.uses,
    ).toEqual([
      { material: 'gel' },
      { material: 'guide:vessel' },
      { material: 'water', amount: { least: '600', usual: '600', most: '600', unit: 'mL' } },
      { material: 'felt', pieces: ['skin'] },
    ]);
  });

  it('no uses said is not the same as none', () => {
    expect(stepWith('people: 1').step!.uses).toBeUndefined();
    expect(stepWith('uses: []').step!.uses).toEqual([]);
  });

  it('a setting keeps its words, and its quantity where it is one', () => {
    expect(stepWith('set: { heat: 60 °C, flame: low }').step!.set).toEqual({
      heat: { text: '60 °C', heat: { value: '60', unit: '°C' } },
      flame: { text: 'low' },
    });
  });

  it('after: [] follows nothing, though a step stands before it', () => {
    const matter = 'materials: []\nsteps:\n  - id: lay\n  - id: pour\n    after: []\n';
    expect(readGuide(matter).workspace!.guides['small']!.steps[1]!.after).toEqual([]);
  });
});

describe('a usual amount', () => {
  const rowWith = (keys: string) => {
    const found = readGuide(
      `${levels}materials:\n  - use: label\n    ${keys.replaceAll('\n', '\n    ')}\nsteps: []\n`,
    );
    return { amount: found.workspace?.guides['small']?.materials[0]!.amount, codes: codesOf(found) };
  };
  const grams = (least: string, usual: string, most: string) => ({ least, usual, most, unit: 'g' });

  it.each([
    ['amount: 8–14 g\nusual: 10 g', grams('8', '10', '14')],
    ['amount: 8–14 g', grams('8', '14', '14')],
    [
      'amount: { shallow: 8–14 g, deep: 9–15 g }\nusual: 10 g',
      { byLevel: { shallow: grams('8', '10', '14'), deep: grams('9', '10', '15') } },
    ],
    [
      'amount: 8–14 g\nusual: { shallow: 10 g, deep: 12 g }',
      { byLevel: { shallow: grams('8', '10', '14'), deep: grams('8', '12', '14') } },
    ],
  ])('%s', (keys, amount) => {
    expect(rowWith(keys)).toEqual({ amount, codes: [] });
  });

  it('outside its range is underlined itself', () => {
    const { diagnostics } = readGuide(
      'materials:\n  - use: label\n    amount: 8–14 g\n    usual: 20 g\nsteps: []\n',
    );
    expect(diagnostics[0]!.places.map(({ line }) => line)).toEqual([6, 5]);
  });
});

describe('a mistyped key', () => {
  it('is told once, and what it was meant to be is not missed', () => {
    expect(codesOf(readGuide('materials:\n  - use: label\n    amout: 5 g\nsteps: []\n'))).toEqual([
      'unknown-key.near',
    ]);
    expect(codesOf(readGuide('materials:\n  - us: label\n    amount: 5 g\nsteps: []\n'))).toEqual([
      'unknown-key.near',
    ]);
  });

  it('lets its value be read, whatever it is', () => {
    expect(codesOf(readGuide('materials:\n  - use: label\n    amout: some\nsteps: []\n')).toSorted()).toEqual(
      ['amount-unreadable', 'unknown-key.near'],
    );
    expect(
      codesOf(readGuide('materials: []\nsteps:\n  - id: a\n    controls: []\n    contrls: x\n')).toSorted(),
    ).toEqual(['unknown-key']);
    expect(codesOf(readGuide('materials: []\nsteps:\n  - id: a\n    contrls: x\n')).toSorted()).toEqual([
      'unknown-key.near',
      'wrong-kind.list',
    ]);
  });
});
