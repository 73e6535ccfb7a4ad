import { describe, expect, it } from 'vitest';
import { type DocumentRow, makeSearch } from '../../src/browser/search-index.ts';

const rows: readonly DocumentRow[] = [
  [
    'guides/needle-block/index.html',
    'guide',
    'Ultrasound needle block',
    'needle placement',
    'gelatin psyllium sonography tube',
  ],
  ['guides/suture-pad/index.html', 'guide', 'Layered suture pad', 'stitches', 'felt foam'],
  ['materials/index.html#material-gelatin-powder', 'material', 'Gelatin powder', 'bloom 240–260', ''],
  ['tools/index.html#tool-crépine', 'tool', 'Crépine', 'a sieve', ''],
];
const noPause = () => Promise.resolve();
const found = async (query: string) =>
  (await makeSearch(rows, noPause, () => 0))(query).map(({ title }) => title);

describe('the search', () => {
  it('puts a title before a word of the text', async () => {
    expect(await found('gelatin')).toEqual(['Gelatin powder', 'Ultrasound needle block']);
  });

  it('takes one wrong letter in a word of four or more, two in one of seven or more, none below', async () => {
    expect(await found('foan')).toEqual(['Layered suture pad']);
    expect(await found('gelattinn')).toContain('Gelatin powder');
    expect(await found('pat')).not.toContain('Layered suture pad');
  });

  it('takes a word that is not yet finished', async () => {
    expect(await found('psyl')).toEqual(['Ultrasound needle block']);
  });

  it('wants every word', async () => {
    expect(await found('suture gelatin')).toEqual([]);
  });

  it('does not mind accents or capitals', async () => {
    expect(await found('CREPINE')).toEqual(['Crépine']);
  });

  it('makes way for the page after every eight milliseconds of work', async () => {
    const many = Array.from({ length: 100 }, (_, i): DocumentRow => [
      `${i}.html`,
      'page',
      `Page ${i}`,
      '',
      '',
    ]);
    let now = 0;
    let pauses = 0;
    await makeSearch(
      many,
      () => {
        pauses++;
        return Promise.resolve();
      },
      () => (now += 1),
    );
    expect(pauses).toBeGreaterThanOrEqual(10);
  });
});
