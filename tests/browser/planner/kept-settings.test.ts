import { describe, expect, it } from 'vitest';
import { atLevel } from '../../../src/browser/planner/kept-settings.ts';
import { isSetting, settingNames } from '../../../src/browser/planner/setting-names.ts';
import { singleSettings, tableSettings } from '../../../src/exports/setting-texts.ts';

const at = (query: string, from: string, to: string): string =>
  decodeURIComponent(atLevel(new URLSearchParams(query), from, to).toString());

describe('settings of one level, at another', () => {
  it('make along what was made, where the other was made along', () => {
    expect(at('batch=12&batch:deep=4&builders=3', 'shallow', 'deep')).toBe(
      'batch:shallow=12&batch=4&builders=3',
    );
  });

  it('are the same there and back', () => {
    const query = 'batch=12&batch:deep=4';
    const there = atLevel(new URLSearchParams(query), 'shallow', 'deep');
    expect(
      decodeURIComponent(atLevel(there, 'deep', 'shallow').toString())
        .split('&')
        .sort(),
    ).toEqual(query.split('&').sort());
  });

  it('keep their number where the other was not made along', () => {
    expect(at('batch=12', 'shallow', 'deep')).toBe('batch=12');
  });
});

describe('the names of settings', () => {
  it('are those that an address has', () => {
    const names = new Set([...Object.keys(singleSettings), ...Object.keys(tableSettings)]);
    expect([...settingNames].sort()).toEqual([...names].sort());
  });

  it('have the id of what they are of behind a colon', () => {
    expect(['batch', 'batch:deep', 'pack:felt'].every(isSetting)).toBe(true);
    expect(['q', 'page:2', 'batches'].some(isSetting)).toBe(false);
  });
});
