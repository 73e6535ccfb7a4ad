import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { keysToWrite, ownKeysToWrite } from '../../src/reading/shape/keys-to-write.ts';
import { guideShape } from '../../src/reading/shape/guide-shape.ts';
import { unwrapped } from '../../src/reading/shape/kinds.ts';
import { moduleShape } from '../../src/reading/shape/module-shape.ts';

/** The shape of an entry of a list: `entryOf(moduleShape, 'session', 'agenda')`. */
function entryOf(shape: z.ZodObject, ...path: readonly string[]): z.ZodObject {
  const list = path.reduce<z.ZodType>(
    (at, key) => unwrapped((at as z.ZodObject).shape[key] as z.ZodType),
    shape,
  );
  return unwrapped((list as z.ZodArray).element as z.ZodType) as z.ZodObject;
}

describe('what is written for an entry that stands in words', () => {
  const agenda = entryOf(moduleShape, 'session', 'agenda');
  it.each([
    ['brief, 10 min', ['id: brief', 'takes: 10 min']],
    ['Brief and look round (15 minutes)', ['id: brief-and-look-round', 'takes: 15 minutes']],
    ['practice', ['id: practice']],
    ['What everybody does when all of it is over', ['id: …']],
  ])('of an agenda, “%s”', (text, lines) => {
    expect(keysToWrite(agenda, text)).toEqual(lines);
  });

  it.each([
    ['scoring', 'items', 'Flashback seen', ['id: …', 'says: Flashback seen']],
    ['surveys', 'items', 'Sure: how?', ['id: …', "ask: 'Sure: how?'"]],
  ])('of %s, its sentence', (key, list, text, lines) => {
    expect(keysToWrite(entryOf(moduleShape, key, list), text)).toEqual(lines);
  });

  it.each([
    ['prepare', 'read chapter 4, 10 min', ['read: chapter 4', 'takes: 10 min']],
    ['objectives', 'tie a knot', ['id: …', 'does: tie a knot']],
  ])('of %s, its act', (list, text, lines) => {
    expect(keysToWrite(entryOf(moduleShape, list), text)).toEqual(lines);
  });

  it.each([
    ['keeps', '3 days in the fridge', ['for: 3 days', 'at: fridge']],
    ['steps', 'Melt the gel, 15 min', ['id: melt-the-gel', 'hands-on: 15 min']],
    ['checks', 'Is it clear?', ['id: …', 'ask: Is it clear?']],
    ['tools', 'pan', ['use: pan']],
    ['mixes', 'gel', ['id: gel', 'makes: …', 'of:', '  - use: …', '    amount: …']],
  ])('of %s, “%s”', (list, text, lines) => {
    expect(keysToWrite(entryOf(guideShape, list), text)).toEqual(lines);
  });

  it('of a caution all that it has to say, and never a word of it', () => {
    expect(keysToWrite(entryOf(guideShape, 'cautions'), 'Hot gel burns. Wear gloves.')).toEqual([
      'id: …',
      'signal: …',
      'hazard: …',
      'harm: …',
      'avoid: […]',
    ]);
  });
});

it.each([
  ['1 = stops, 3 = goes on; 5: never stops', ['1: stops', '3: goes on', '5: never stops']],
  ['1 to 5', ['1: …', '5: …']],
  ['good', ['…: …']],
  ['a loaf tin', ['…: …']],
])('keys of the author’s own in “%s”', (text, lines) => {
  expect(ownKeysToWrite(text)).toEqual(lines);
});
