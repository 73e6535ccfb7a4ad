import { expect, it } from 'vitest';
import { moduleDepths } from '../../../src/core/model/module-depths.ts';

const depths = (after: Readonly<Record<string, readonly string[]>>) =>
  Object.fromEntries(moduleDepths(Object.entries(after).map(([id, before]) => ({ id, after: before }))));

it('a module stands behind the longest row that leads to it', () => {
  const after = { day: ['knots', 'needle', 'gone'], needle: ['knots'], knots: [] };
  expect(depths(after)).toEqual({ knots: 0, needle: 1, day: 2 });
});

it('sixty modules, each after all before it, are ordered at once', () => {
  // 2 to the power of 59 ways lead to the last
  const ids = Array.from({ length: 60 }, (_, i) => `m${i}`);
  const after = Object.fromEntries(ids.map((id, i) => [id, ids.slice(0, i)]));
  expect(depths(after)['m59']).toBe(59);
});
