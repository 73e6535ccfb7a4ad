import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OwnSettings } from '../../src/core/plan/own/own-settings.ts';
import { addressOf, settingsFrom } from '../../src/exports/plan-address.ts';
import { anySettings, pagesOf } from '../browser/planner/any-settings.ts';
import { readDemo, today } from '../publishing/demo-site.ts';

const { workspace } = await readDemo();
const pages = pagesOf(workspace!, today);
const page = pages.find(({ guide, level }) => guide === 'needle-block' && level === 'shallow')!;
const read = (query: string) => settingsFrom(query, page);

const rows: readonly (readonly [address: string, settings: OwnSettings])[] = [
  ['', {}],
  ['batch=12', { batch: 12 }],
  ['batch=12&batch:deep=4', { batch: 12, along: { deep: 4 } }],
  ['builders=3&start=2026-12-01T09:00', { builders: 3, start: '2026-12-01T09:00' }],
  [
    'ready-by=2026-12-01T09:00&margin=120+min&good-until=2026-12-02T17:00',
    { readyBy: '2026-12-01T09:00', margin: 120, goodUntil: '2026-12-02T17:00' },
  ],
  ['units=us&paper=letter', { units: 'US', paper: 'Letter' }],
  ['labour=20.5+GBP/h', { labour: { amount: '41/2', currency: 'GBP' } }],
  ['owned:loaf-tin=3', { owned: { 'loaf-tin': 3 } }],
  ['stock:gelatin-powder=240+g', { stock: { 'gelatin-powder': { value: '240', unit: 'g' } } }],
  ['stock:gelatin-powder=1/3+kg', { stock: { 'gelatin-powder': { value: '1/3', unit: 'kg' } } }],
  [
    'pack:gelatin-powder=1+kg+at+11+GBP,+500+g',
    {
      packs: {
        'gelatin-powder': [
          { holds: { count: 1, each: { value: '1', unit: 'kg' } }, price: { amount: '11', currency: 'GBP' } },
          { holds: { count: 1, each: { value: '500', unit: 'g' } } },
        ],
      },
    },
  ],
];

describe('the settings of a page in its address', () => {
  it.each(rows)('%s', (address, settings) => {
    expect(addressOf(settings, page)).toBe(address);
    expect(read(address)).toEqual({ settings, unread: [] });
  });

  it('leaves out what is as published', () => {
    const { program, guides, materials, tools } = page.workspace;
    const published: OwnSettings = {
      batch: guides['needle-block']!.states?.for ?? 1,
      builders: program.builders,
      margin: 0,
      units: program.units,
      paper: program.paper,
      labour: program.labour!,
      owned: Object.fromEntries(Object.keys(tools).map((id) => [id, program.owned[id]!])),
      packs: { 'gelatin-powder': materials['gelatin-powder']!.packs },
    };
    expect(addressOf(published, page)).toBe('');
  });

  it('reads what it has written, whatever is set', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...pages).chain((any) => fc.tuple(fc.constant(any), anySettings(any))),
        ([any, own]) => {
          const address = addressOf(own, any);
          const { settings, unread } = settingsFrom(`?${address}`, any);
          expect(unread).toEqual([]);
          expect(own).toMatchObject(settings);
          expect(addressOf(settings, any)).toBe(address);
          expect(address).toMatch(/^[\w.~:/,=&+%-]*$/);
        },
      ),
      { numRuns: 200 },
    );
  });

  it.each([
    ['batch=0'],
    ['batch=1.5'],
    ['batch=10001'],
    ['batch=twelve'],
    ['batch:shallow=4'],
    ['batch:huge=4'],
    ['builders=101'],
    ['part=skin'],
    ['start=tomorrow'],
    ['start=2026-02-30T09:00'],
    ['margin=3 working days'],
    ['units=imperial'],
    ['paper=A3'],
    ['labour=20 GBP'],
    ['labour=20 JPY/h'],
    ['owned:loaf-tin=-1'],
    ['owned:anvil=1'],
    ['stock:gelatin-powder=3 m'],
    ['stock:gelatin-powder=some'],
    ['stock:gelatin-powder=1,5 kg'],
    ['stock:plutonium=1 g'],
    ['stock:__proto__=1 g'],
    ['pack:gelatin-powder=0 g'],
    ['pack:gelatin-powder=300 mm x 200 mm at 2 GBP'],
    ['pack:gelatin-powder=1 kg at 11'],
    ['pack:gelatin-powder=1 kg at 11 JPY'],
    ['pack:gelatin-powder=1 kg at -3 GBP'],
  ])('says that it cannot read %s, and reads the rest', (pair) => {
    const [key, text] = pair.split('=') as [string, string];
    expect(read(`${pair}&batch=7`)).toEqual({
      settings: { batch: 7 },
      unread: [{ key, text }],
    });
  });

  it('passes over what others have put into an address', () => {
    expect(read('forcedownload=1&toString=3&stockpile:felt=2&batch=7')).toEqual({
      settings: { batch: 7 },
      unread: [],
    });
  });
});
