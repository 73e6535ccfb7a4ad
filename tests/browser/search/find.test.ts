import { describe, expect, it } from 'vitest';
import type { Slicing } from '../../../src/browser/work/slices.ts';
import { nearWords, startSearch } from '../../../src/browser/search/find.ts';
import type { PageKind, PageRow } from '../../../src/exports/search-library.ts';

const row = (kind: PageKind, title: string, says = '', text = '', of = '', also = ''): PageRow => [
  `${title}.html`,
  kind,
  title,
  of,
  says,
  text,
  also,
];
const pages = [
  row('guide', 'Ultrasound needle block', 'needle placement', 'gelatin psyllium tube', '', 'sonography'),
  row('guide', 'Layered suture pad', 'stitches', 'felt foam'),
  row('material', 'Gelatin powder', 'bloom 240–260'),
  row('tool', 'Crépine', 'a sieve'),
  row('tool', 'Kitchen scale'),
  row('step', 'Bloom the gelatin', '', 'Rain it over the water.', 'Ultrasound needle block'),
  row('step', 'Wrap and label', '', 'Write on it: not food. It scalds.', 'Ultrasound needle block'),
];
const atOnce: Slicing = { now: () => 0, budget: 8, later: (goOn) => goOn() };

async function find(query: string, of: readonly PageRow[] = pages) {
  const search = startSearch({ pages: of }, atOnce);
  await search.whole;
  return search.find(query);
}
const titles = async (query: string) => (await find(query)).hits.map(({ page }) => page[2]);

describe('the search', () => {
  it('puts a title before a word of the text', async () => {
    expect(await titles('gelatin')).toEqual([
      'Gelatin powder',
      'Bloom the gelatin',
      'Ultrasound needle block',
    ]);
  });

  it('takes one wrong letter in a word of four or more, two in one of seven or more, none below', async () => {
    expect(await titles('foan')).toEqual(['Layered suture pad']);
    expect(await titles('gelattinn')).toContain('Gelatin powder');
    expect(await titles('faan')).toEqual([]);
    expect(await titles('pat')).not.toContain('Layered suture pad');
  });

  it('puts a word as it stands before one that only comes near', async () => {
    expect((await titles('scald')).slice(0, 1)).toEqual(['Wrap and label']);
    expect(await titles('scald')).toContain('Kitchen scale');
  });

  it('takes a word that is not yet finished, and plural for singular', async () => {
    expect(await titles('psyl')).toEqual(['Ultrasound needle block']);
    expect((await titles('sutures'))[0]).toBe('Layered suture pad');
    expect((await titles('stitch'))[0]).toBe('Layered suture pad');
  });

  it('wants every word; where no page has them all, says that these have some', async () => {
    expect(await find('needle gelatin')).toMatchObject({ onlySome: false });
    const some = await find('suture gelatin');
    expect(some.onlySome).toBe(true);
    expect(some.hits.map(({ page }) => page[2])).toContain('Layered suture pad');
  });

  it('does not mind accents, capitals or ligatures, on either side', async () => {
    expect(await titles('CREPINE')).toEqual(['Crépine']);
    expect(await titles('crépine')).toEqual(['Crépine']);
  });

  it('finds by what people also say', async () => {
    expect(await titles('sonography')).toEqual(['Ultrasound needle block']);
    expect(await titles('sonografy')).toEqual(['Ultrasound needle block']);
  });

  it('finds a step by its own words, with those of its guide to help, never by those alone', async () => {
    expect(await titles('needle block')).toEqual(['Ultrasound needle block']);
    expect((await titles('needle block wrap'))[0]).toBe('Wrap and label');
  });

  it('answers while its index still grows, and makes way for the page after every eight milliseconds', async () => {
    const many = Array.from({ length: 100 }, (_, i) => row('manual', `Page ${i}`));
    let now = 0;
    let pauses = 0;
    let early = 0;
    const later = (goOn: () => void): void =>
      queueMicrotask(() => {
        if (pauses++ === 2) early = search.find('page').hits.length;
        goOn();
      });
    const search = startSearch({ pages: many }, { now: () => (now += 1), budget: 8, later });
    await search.whole;
    expect(pauses).toBeGreaterThanOrEqual(10);
    expect(early).toBeGreaterThan(0);
    expect(early).toBeLessThan(20);
    expect(search.find('page').hits).toHaveLength(100);
  });
});

it('words that are near stand in titles, nearest first, two swapped letters being one step', () => {
  expect(nearWords('suutre', { pages })[0]).toBe('suture');
  expect(nearWords('crepnie', { pages })[0]).toBe('crépine');
  expect(nearWords('xxxxxxxx', { pages })).toEqual([]);
});
