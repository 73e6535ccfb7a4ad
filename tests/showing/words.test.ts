import { readFileSync, readdirSync } from 'node:fs';
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

// Which limit holds, how good protection must be and what helps the injured is for the supplier's data sheet, the
// program's own policy and licensed practice to say. What a label asks for by its code is the label's own word.
it('no words of ours set a limit of exposure, rate protective equipment or teach first aid', () => {
  const folder = new URL('../../src/words/', import.meta.url);
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (name) => name.endsWith('.ts') && name !== 'precautions.ts',
  );
  expect(files.length).toBeGreaterThan(40);
  const ours =
    /\bppm\b|mg\/m(3|³)|\bEN ?(ISO ?)?\d{3}\b|\bFFP\d\b|\bN95\b|first aid|rinse (the |your )?eyes|induce vomiting|\bNIOSH\b/i;
  const found = files.filter((name) => ours.test(readFileSync(new URL(name, folder), 'utf8')));
  expect(found).toEqual([]);
});
