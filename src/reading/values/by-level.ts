import type { ByLevel, Varied } from '../../core/model/values.ts';
import { nearName } from '../../core/near-name.ts';
import { nameOfPath } from '../sheet/name-of-path.ts';
import type { Fault } from '../report.ts';
import type { Raw, RawMap } from '../sheet/sheet.ts';
import { entries, refuse, refuseKey, type Written } from '../sheet/written.ts';

/**
 * A value that may differ by level, `{ shallow: 12 h, deep: 16 h }`: the one reader of such maps. A map is by level as
 * soon as one of its keys is the id of a level; then every level must be there, and nothing else.
 */
export function readVaried<V>(
  at: Written<Raw> | undefined,
  levels: readonly string[],
  readOne: (one: Written<Raw>) => V | undefined,
): Varied<V> | undefined {
  if (!at) return undefined;
  return isByLevel(at.value, levels) ? readByLevel(at as Written<RawMap>, levels, readOne) : readOne(at);
}

export function isByLevel(value: Raw, levels: readonly string[]): boolean {
  return isMap(value) && Object.keys(value).some((key) => levels.includes(key));
}

export function isMap(value: Raw): value is RawMap {
  return typeof value === 'object' && !Array.isArray(value);
}

function readByLevel<V>(
  at: Written<RawMap>,
  levels: readonly string[],
  readOne: (one: Written<Raw>) => V | undefined,
): ByLevel<V> | undefined {
  const missing = levels.filter(
    (level) => !Object.hasOwn(at.value, level) && !isMistyped(level, at.value, levels),
  );
  if (missing.length > 0)
    refuse(at, { code: 'level-missing', facts: { missing: missing.join(', '), firstMissing: missing[0]! } });
  const read = entries(at).map(([key, value]) => {
    if (!levels.includes(key)) refuseKey(value, unknownLevel(at, key, levels));
    return [key, readOne(value)] as const;
  });
  const good = read.filter((pair): pair is readonly [string, V & {}] => pair[1] !== undefined);
  return good.length === levels.length ? { byLevel: Object.fromEntries(good) } : undefined;
}

/** A level that a mistyped key was meant to be is not missing as well: one cause, one message. */
function isMistyped(level: string, map: RawMap, levels: readonly string[]): boolean {
  return Object.keys(map).some((key) => !levels.includes(key) && nearName(key, levels) === level);
}

/** Where one text belongs: a map there was meant to be by level, and none of its keys is one. */
export function refuseMapForText(at: Written<Raw>, levels: readonly string[]): undefined {
  const [first] = isMap(at.value) ? entries(at as Written<RawMap>) : [];
  if (!first || levels.length === 0) return refuse(at, { code: 'wrong-kind', variant: 'text', facts: {} });
  return refuseKey(first[1], unknownLevel(at, first[0], levels));
}

function unknownLevel(map: Written<unknown>, key: string, levels: readonly string[]): Fault {
  const near = nearName(key, levels);
  const { what } = nameOfPath(map.path, map.file.sheet);
  const facts = { what, level: key, levels: levels.join(', '), ...(near ? { near } : {}) };
  return { code: 'level-unknown', facts, ...(near ? { variant: 'near' } : {}) };
}
