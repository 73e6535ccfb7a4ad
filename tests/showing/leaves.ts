import type { Shown } from '../../src/showing/shown/shown.ts';

/** Every finished text of a shown plan, wherever it stands. */
export function leavesOf(value: unknown): readonly Shown[] {
  if (Array.isArray(value)) return value.flatMap(leavesOf);
  if (typeof value !== 'object' || value === null) return [];
  if (isShown(value)) return [value];
  return Object.values(value).flatMap(leavesOf);
}

function isShown(value: object): value is Shown {
  return 'key' in value && 'text' in value && Object.keys(value).length === 2;
}
