import type { GuideShape } from '../shape/guide-shape.ts';
import { field, items, type Written } from '../sheet/written.ts';

/** The names that the values of a guide may speak of, known before any value is read. */
export interface GuideNames {
  readonly levels: readonly string[];
  readonly parts: readonly string[];
  /** Tools that the guide's own rows name. */
  readonly tools: readonly string[];
}

/** Keys of a time: a map with one of them could not be told from a map by level. */
const keysOfTimes = new Set(['once', 'each', 'as', 'usual', 'until']);
export const isReservedForTimes = (id: string): boolean => keysOfTimes.has(id) || id.startsWith('if-');

/** Words that `for: each …` has for itself. */
const wordsOfBases = new Set(['model', 'zone', 'batch']);
export const isReservedForBases = (id: string): boolean => wordsOfBases.has(id);

export function namesOf(from: Written<GuideShape>): GuideNames {
  return {
    levels: textsUnder(items(field(from, 'levels')), 'id').filter((id) => !isReservedForTimes(id)),
    parts: textsUnder(items(field(from, 'parts')), 'id'),
    tools: textsUnder(items(field(from, 'tools')), 'use'),
  };
}

function textsUnder<K extends string>(
  records: readonly Written<{ readonly [key in K]?: unknown }>[],
  key: K,
): readonly string[] {
  return records.map((record) => record.value[key]).filter((text) => typeof text === 'string');
}
