import { z } from 'zod';
import { otherDangers } from '../../core/model/material.ts';
import type { Fault } from '../report.ts';
import type { Written } from '../sheet/written.ts';
import { daysFromTo } from '../values/hours.ts';
import { isId } from '../values/plain-words.ts';
import { asValue, keysToWrite, ownKeysToWrite } from './keys-to-write.ts';
import { spoken, unwrapped } from './kinds.ts';

/** How a `wrong-kind` goes on. */
type Wanted = Omit<Fault, 'code'>;

/** Which of our kinds a place wants: a text, a list, or keys with values; and what helps to write it. */
export function wanted(issue: z.core.$ZodIssue, schema: z.ZodType, at: Written<unknown>): Wanted {
  const expected = issue.code === 'invalid_type' ? issue.expected : '';
  const text = typeof at.value === 'string' ? at.value.trim() : '';
  const asSpoken = spoken.get(schema);
  const understood = asSpoken && asWritten[asSpoken.of](text);
  if (understood) return understood;
  if (expected === 'array') return listWanted(schema, text);
  if (expected === 'object') return keysWanted(schema as z.ZodObject, at);
  return expected === 'record' ? ownKeysWanted(ownKeysToWrite(text)) : { variant: 'text', facts: {} };
}

/** How to write what somebody wrote as they speak, where that can be understood. */
const asWritten = {
  /** "Mon-Fri" */
  days: (text: string): Wanted | undefined => {
    const days = daysFromTo(text);
    return days ? { variant: 'days', facts: { days } } : undefined;
  },
  /** "8/12/2026" */
  dates: (text: string): Wanted | undefined =>
    /[^\d, -]/.test(text) ? { variant: 'dates', facts: {} } : undefined,
  /** "contains latex" */
  hazards: (text: string): Wanted | undefined =>
    /\bH\d{3}/.test(text) ? undefined : { variant: 'hazards', facts: { also: dangersIn(text) } },
  /** Who comes to a session is asked for in full: a number alone is what people write first. */
  people: (text: string): Wanted => ({
    variant: 'people',
    facts: { count: /^\d+/.exec(text)?.[0] ?? '…' },
  }),
  /** "60 %" */
  pass: (): Wanted => ({ variant: 'pass', facts: {} }),
  /** "stove", for one of it */
  places: (text: string): Wanted | undefined => {
    const names = text.split(/, */);
    return names.every(isId) ? ownKeysWanted(names.map((name) => `${name}: 1`)) : undefined;
  },
};

/** `latex` of “contains latex”: dangers that have an id of their own; `…` where none is named. */
function dangersIn(text: string): string {
  const words = text.toLowerCase().replaceAll(' ', '-');
  return otherDangers.filter((danger) => words.includes(danger)).join(', ') || '…';
}

/** A list of records, or of texts: between brackets a comma would part a text that has one. */
function listWanted(schema: z.ZodType, text: string): Wanted {
  const element = schema instanceof z.ZodArray ? unwrapped(schema.element as z.ZodType) : schema;
  if (element instanceof z.ZodObject) return { variant: 'rows', facts: blockOf(element, text, 4) };
  if (/^(none|no|nothing)$/i.test(text)) return { variant: 'none', facts: {} };
  if (!/[^\p{L}\p{N} .-]/u.test(text) || areNames(text.split(/,\s*/))) return { variant: 'list', facts: {} };
  return { variant: text.includes(',') ? 'sentences' : 'sentence', facts: { sentence: asValue(text) } };
}

/** Ids, or a few figures and signs each, such as `10–30°, 60°`. */
function areNames(parts: readonly string[]): boolean {
  return parts.every(isId) || parts.every((part) => /^[\d.]+[\p{Pd}\d.]*[°%]?$/u.test(part));
}

/** Keys of a record: of a row of a list, or under a key; a list in their place may hold what belongs to one of them. */
function keysWanted(schema: z.ZodObject, { path, value }: Written<unknown>): Wanted {
  const first: unknown = Array.isArray(value) ? value[0] : value;
  const isRow = typeof path.at(-1) === 'number' && typeof value === 'string';
  const text = typeof first === 'string' && (isRow || Array.isArray(value)) ? first : '';
  return { variant: isRow ? 'row' : 'keys', facts: blockOf(schema, text, 2) };
}

const ownKeysWanted = (lines: readonly string[]): Wanted => ({
  variant: 'own-keys',
  facts: { block: below(lines, 2) },
});

/** The keys to write, indented below their first; and all that there are. */
export function blockOf(schema: z.ZodObject, text = '', indent = 4): Fault['facts'] {
  const known = Object.keys(schema.shape).sort().join(', ');
  return { known, block: below(keysToWrite(schema, text), indent) };
}

const below = (lines: readonly string[], indent: number): string => lines.join(`\n${' '.repeat(indent)}`);
