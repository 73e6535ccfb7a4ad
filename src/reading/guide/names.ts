import type { GuideShape } from '../shape/guide-shape.ts';
import { field, items, type Written } from '../written.ts';

/** The names that the values of a guide may speak of, known before any value is read. */
export interface GuideNames {
  readonly levels: readonly string[];
  readonly parts: readonly string[];
  /** Tools that the guide's own rows name. */
  readonly tools: readonly string[];
}

export function namesOf(from: Written<GuideShape>): GuideNames {
  return {
    levels: textsUnder(items(field(from, 'levels')), 'id'),
    parts: textsUnder(items(field(from, 'parts')), 'id'),
    tools: textsUnder(items(field(from, 'tools')), 'use'),
  };
}

function textsUnder<K extends string>(records: readonly Written<{ readonly [key in K]?: unknown }>[], key: K): readonly string[] {
  return records.map((record) => record.value[key]).filter((text) => typeof text === 'string');
}
