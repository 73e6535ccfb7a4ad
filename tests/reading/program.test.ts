import { describe, expect, it } from 'vitest';
import { codesOf, readWith } from './base-workspace.ts';

const least = 'name: Skills Room\ncurrency: GBP\ntime-zone: Europe/London\n';
const programWith = (keys: string) => readWith({ 'program.yaml': least + keys }).workspace!.program;
const codesWith = (keys: string) => codesOf(readWith({ 'program.yaml': least + keys }));

describe('a program of three lines', () => {
  it('works Monday to Friday from nine to five, alone, in English and metric, on A4', () => {
    expect(programWith('')).toMatchObject({
      locale: 'en',
      units: 'metric',
      paper: 'A4',
      work: { days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], hours: [[540, 1020]], closed: [] },
      builders: 1,
      stations: {},
      owned: {},
      spares: '0',
      suppliers: {},
    });
  });
});

describe('working hours', () => {
  it.each([
    ['always', [[0, 1440]]],
    ['09:00-17:00', [[540, 1020]]],
    [
      '[9:00 - 12:30, 13:00–17:00]',
      [
        [540, 750],
        [780, 1020],
      ],
    ],
    [
      '[09:00 to 12:00, 12:00-24:00]',
      [
        [540, 720],
        [720, 1440],
      ],
    ],
    [
      '[00:00-06:00, 22:00-24:00]',
      [
        [0, 360],
        [1320, 1440],
      ],
    ],
  ])('%s', (hours, minutes) => {
    expect(programWith(`work: { hours: ${hours} }\n`).work.hours).toEqual(minutes);
  });

  it('take days in the order of the week, however they are listed, and closed days in order', () => {
    const work = 'work:\n  days: [Sat, monday, Wed, Mon]\n  closed: [2026-12-25, 2026-01-01, 2026-12-25]\n';
    expect(programWith(work).work).toMatchObject({
      days: ['Mon', 'Wed', 'Sat'],
      closed: ['2026-01-01', '2026-12-25'],
    });
  });

  it.each([
    ['[13:00-17:00, 09:00-12:30]', 'hours-overlap'],
    ['[09:00-12:30, 12:00-17:00]', 'hours-overlap'],
    ['[22:00-06:00]', 'hours-unreadable.backwards'],
    ['[09:00-09:00]', 'hours-unreadable.backwards'],
    ['[09:60-10:00]', 'hours-unreadable.no-such-time'],
    ['[9-17]', 'hours-unreadable'],
    ['never', 'hours-unreadable'],
    ['[]', 'hours-none'],
    ['{ from: 9 }', 'wrong-kind.list'],
  ])('not %s', (hours, code) => {
    expect(codesWith(`work: { hours: ${hours} }\n`)).toEqual([code]);
  });
});

describe('places and names', () => {
  it.each([
    ['locale: en-gb', { locale: 'en-GB' }],
    ['units: us', { units: 'US' }],
    ['units: US', { units: 'US' }],
    ['paper: letter', { paper: 'Letter' }],
    ['spares: 1/10', { spares: '1/10' }],
    ['stations: { stove: 0 }', { stations: { stove: 0 } }],
    ['say-also: { ultrasound: [sonography] }', { sayAlso: { ultrasound: ['sonography'] } }],
    ['exchange: { USD: { rate: 0.79, on: 2026-10-01 } }', { minorDigits: { GBP: 2, USD: 2 } }],
  ])('%s', (keys, part) => {
    expect(programWith(`${keys}\n`)).toMatchObject(part);
  });

  it.each([
    ['exchange: { USD: { rate: 0, on: 2026-10-01 } }', ['amount-zero']],
    ['exchange: { usd: { rate: 1, on: 2026-10-01 } }', ['currency-code-unknown.near']],
    ['exchange: { USD: { rate: 1 } }', ['missing-key.on']],
    ['builders: 0', ['count-of-none']],
    ['builders: two', ['amount-unreadable.in-words']],
    ['address: skills.example.org', ['link-unreadable']],
    ['room: [wet]', ['unknown-word']],
    ['suppliers: { Craft shop: { name: a shop } }', ['id-unusable.key']],
    ['owned: { constructor: 1 }', ['refused-yaml.reserved-name']],
    ['work: { days: [Mo] }', ['unknown-word.near']],
  ])('not %s', (keys, codes) => {
    expect(codesWith(`${keys}\n`)).toEqual(codes);
  });
});

it('the digits of every currency of the workspace are put in, by ISO 4217', () => {
  const { workspace } = readWith({
    'tools/scale.yaml': 'name: Scale\nprice: 14000 IQD\n',
    'tools/pot.yaml': 'name: Pot\nprice: 900 JPY\n',
  });
  // ISO 4217 list one: IQD 3, JPY 0, GBP and USD 2.
  expect(workspace!.program.minorDigits).toEqual({ GBP: 2, IQD: 3, JPY: 0, USD: 2 });
});
