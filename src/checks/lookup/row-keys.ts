import type { Place } from '../../core/diagnostic.ts';
import type { GuideAtLevel, Way } from './context.ts';
import { written } from './written.ts';

/** A value of a row under the key that its author chose. */
export interface UnderKey {
  readonly key: string;
  readonly place: Place;
}

/** How much a row takes: under `amount`, or `count` where it is counted. */
export function amountOfRow(read: GuideAtLevel, row: number): UnderKey {
  return underOneOf(read, ['materials', row], ['count', 'amount']);
}

/** The size of a piece, or its `length`; of a row that is cut to one length, the row's own. */
export function sizeOfPiece(read: GuideAtLevel, row: number, piece: number): UnderKey {
  if (isWritten(read, ['materials', row, 'length'])) return underOneOf(read, ['materials', row], ['length']);
  return underOneOf(read, ['materials', row, 'pieces', piece], ['length', 'size']);
}

function underOneOf(read: GuideAtLevel, way: Way, keys: readonly string[]): UnderKey {
  const key = keys.find((one) => isWritten(read, [...way, one])) ?? keys.at(-1)!;
  return { key, place: read.place(...way, key) };
}

/** The place of a key that was left out is that of something round it. */
function isWritten(read: GuideAtLevel, way: Way): boolean {
  return written(read.key(...way)) === way.at(-1);
}
