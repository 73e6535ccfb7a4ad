import { onceEach } from '../once-each.ts';
import type { Module } from './module.ts';

/**
 * How many modules come before each in the longest row that leads to it, by id; what comes before and is not there is
 * passed over.
 *
 *     knots 0 -> needle 1 -> half a day 2        knots 0 -> half a day 2
 *
 * @param modules  Without a circle: a check has seen to that.
 */
export function moduleDepths(modules: readonly Pick<Module, 'id' | 'after'>[]): ReadonlyMap<string, number> {
  const beforeEach = new Map(modules.map(({ id, after }) => [id, after]));
  const depthOf = onceEach((id: string): number =>
    beforeEach
      .get(id)!
      .filter((before) => beforeEach.has(before))
      .reduce((depth, before) => Math.max(depth, depthOf(before) + 1), 0),
  );
  return new Map(modules.map(({ id }) => [id, depthOf(id)]));
}
