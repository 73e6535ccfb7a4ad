import { expect, it } from 'vitest';
import { readLeading } from '../../../src/core/quantity/read.ts';

const amount = (value: string, unit: string) => ({ least: value, usual: value, most: value, unit });
const size = (...values: string[]) => ({ sides: values.map((value) => ({ value, unit: 'mm' })) });

it.each([
  ['300 mm x 200 mm of felt', size('300', '200'), 'of felt'],
  ['300mm × 200mm felt', size('300', '200'), 'felt'],
  ['220 x 110 x 60 mm', size('220', '110', '60'), ''],
  ['12 pins', { count: 12 }, 'pins'],
  ['4', { count: 4 }, ''],
  ['1/2 pack', amount('1/2', ''), 'pack'],
  ['12 x 180 mm', { count: 12 }, 'x 180 mm'],
  ['1 1/2 in of tape', amount('3/2', 'in'), 'of tape'],
  ['1.2 L of the gel', amount('6/5', 'L'), 'of the gel'],
  ['5 g.', amount('5', 'g'), '.'],
  ['2 US cups of flour', amount('2', 'US cup'), 'of flour'],
  ['60 °C', amount('60', '°C'), ''],
  ['2 h 30 min of waiting', amount('150', 'min'), 'of waiting'],
  ['8–14 g of husk', { least: '8', usual: '14', most: '14', unit: 'g' }, 'of husk'],
  ['15 mm ± 3 mm', { least: '12', usual: '15', most: '18', unit: 'mm' }, ''],
])('%s begins with an amount', (text, found, rest) => {
  expect(readLeading(text)).toEqual({ amount: found, rest });
});

it.each([
  'felt',
  '3D print',
  '3D print. Sanded',
  '15 mm ± 3 g',
  '2-part resin',
  '1,000 g',
  '',
  'the 12 pins',
  '5 g to 10 mL',
])('%s does not begin with an amount that can be read', (text) => {
  expect(readLeading(text)).toBeUndefined();
});
