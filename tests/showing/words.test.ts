import { expect, it } from 'vitest';
import { otherDangers } from '../../src/core/model/material.ts';
import { units } from '../../src/core/quantity/units.ts';
import { calendarWords, controlWords, hazardStatements, otherDangerWords } from '../../src/words/index.ts';

it('there are words for every danger that a file may name', () => {
  expect(Object.keys(otherDangerWords).sort()).toEqual([...otherDangers].sort());
});

it('controls are published in the order of the alphabet, each as something to do', () => {
  const ids = Object.keys(controlWords);
  expect(ids).toEqual([...ids].sort());
  expect(ids.filter((id) => !/^[a-z]+(-[a-z]+)*$/.test(id))).toEqual([]);
  expect(Object.values(controlWords).filter((text) => /[.!]$/.test(text))).toEqual([]);
});

// UN GHS Rev. 10 (2023), Annex 3: physical hazards are H2xx, health H3xx, environment H4xx; three statements by heart.
it('hazard statements stand by their GHS code', () => {
  expect(Object.keys(hazardStatements).filter((code) => !/^H[234]\d\d$/.test(code))).toEqual([]);
  expect(hazardStatements['H225']).toBe('Highly flammable liquid and vapour');
  expect(hazardStatements['H317']).toBe('May cause an allergic skin reaction');
  expect(hazardStatements['H410']).toBe('Very toxic to aquatic life with long lasting effects');
});

it('the week begins on Monday and has seven days, the year twelve months', () => {
  expect(calendarWords.days).toHaveLength(7);
  expect(calendarWords.days[0]).toBe('Mon');
  expect(calendarWords.months).toHaveLength(12);
});

it('no unit is printed that reads like another', () => {
  expect(units.map(({ symbol }) => symbol)).not.toContain('gr');
});
