import { describe, expect, it } from 'vitest';
import { isThere, textOf, valueAt, valuesAt } from '../../../src/browser/refresh/values-at.ts';
import { shown } from '../../../src/showing/shown/shown.ts';

const plan = {
  rows: [
    { id: 'felt', name: shown('rows[0].name', 'Felt') },
    { id: 'glue', name: shown('rows[1].name', '') },
  ],
  links: { 3: shown('links[3]', '12 g') },
  none: shown('none', ''),
};

describe('a key of a plan', () => {
  it.each([
    ['rows[0].name', 'Felt'],
    ['rows.felt.name', 'Felt'],
    ['links[3]', '12 g'],
    ['none', ''],
  ])('%s leads to “%s”', (key, text) => {
    expect(textOf(valueAt(plan, key))).toBe(text);
  });

  it('leads nowhere where nothing of that name is', () => {
    for (const key of ['rows[2].name', 'rows.tape.name', 'guide.title', 'toString'])
      expect(valuesAt(plan, key)).toEqual([]);
  });

  it('stands for all of a list with empty brackets: there is one where any is said', () => {
    expect(valuesAt(plan, 'rows[].id')).toEqual(['felt', 'glue']);
    expect(isThere(plan, 'rows[].name')).toBe(true);
    expect(isThere({ rows: plan.rows.slice(1) }, 'rows[].name')).toBe(false);
  });

  it('is not there where its text or its list is empty', () => {
    expect(isThere(plan, 'none')).toBe(false);
    expect(isThere(plan, 'rows')).toBe(true);
    expect(isThere({ rows: [] }, 'rows')).toBe(false);
    expect(isThere(plan, 'rows.felt')).toBe(true);
  });
});
