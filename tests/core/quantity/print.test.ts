import { expect, it } from 'vitest';
import { printAmount, printHolding } from '../../../src/core/quantity/print.ts';
import { readAmount, readHolding } from '../../../src/core/quantity/read.ts';
import { spellingsOf } from '../../../src/core/quantity/spellings.ts';
import { unitOf } from '../../../src/core/quantity/units.ts';
import { valueOf } from './readings.ts';

it.each([
  ['350 g', '350 g'],
  ['8–8 g', '8 g'],
  ['8 to 14 g', '8–14 g'],
  ['12', '12'],
  ['2–3', '2–3'],
  ['1/3 m', '1/3 m'],
])('the amount %j is printed %j', (text, printed) => {
  expect(printAmount(valueOf(readAmount(text)))).toBe(printed);
});

it.each([
  ['500 g', '500 g'],
  ['1 x 500 g', '500 g'],
  ['50', '50'],
  ['5x450mm×300mm', '5 x 450 mm x 300 mm'],
])('a pack that holds %j is printed %j', (text, printed) => {
  expect(printHolding(valueOf(readHolding(text)))).toBe(printed);
});

it('a unit is spelled as a keyboard can, its symbol first; a kitchen measure never without its system', () => {
  expect(spellingsOf(unitOf('m²'))).toEqual(['m²', 'm2', 'm^2', 'sq m']);
  expect(spellingsOf(unitOf(''))).toEqual(['']);
  expect(spellingsOf(unitOf('metric cup'))).toEqual(['metric cup', 'metric cups']);
  expect(spellingsOf(unitOf('imp quart'))).toEqual(
    ['imp', 'imp.', 'imperial', 'UK'].flatMap((imp) => [`${imp} quart`, `${imp} quarts`, `${imp} qt`]),
  );
});
