import { expect, it } from 'vitest';
import { readHeat } from '../../../src/core/quantity/read.ts';

it.each([
  ['60 °C', '60', '°C'],
  ['60 degrees Celsius', '60', '°C'],
  ['60 ºC in the middle', '60', '°C'],
  ['low, about 60 C', '60', '°C'],
  ['58–62 °C', '62', '°C'],
  ['58°–62 °C', '62', '°C'],
  ['58 °C-62 °C', '62', '°C'],
  ['between 58 and 62 °C', '62', '°C'],
  ['60 °C ± 2 °C', '62', '°C'],
  ['140 °F (60 °C)', '140', '°F'],
  ['5 °C, then 110 °F', '110', '°F'],
  ['-80 °C', '-80', '°C'],
  ['-20 to 5 °C', '5', '°C'],
  ['down to -80 °C', '-80', '°C'],
])('the hottest that “%s” speaks of is %s %s', (text, value, unit) => {
  expect(readHeat(text)).toEqual({ ok: true, value: { value, unit } });
});

it.each(['low', '4 mm', '3 turns', 'mark 6', '30 degrees from level', '20° of tilt', '2 h at 3 bar'])(
  '“%s” speaks of no heat',
  (text) => {
    expect(readHeat(text)).toEqual({ ok: true, value: undefined });
  },
);

it.each([
  ['60 degrees', '60', '60 °C'],
  ['60°', '60', '60 °C'],
  ['about 60 deg.', '60', 'about 60 °C'],
  ['60 degrees in the bath', '60', '60 °C in the bath'],
])('“%s” may be a heat or an angle', (text, number, celsius) => {
  expect(readHeat(text)).toEqual({
    ok: false,
    problem: { code: 'unit-ambiguous', variant: 'degrees', facts: { text, number, celsius } },
  });
});
