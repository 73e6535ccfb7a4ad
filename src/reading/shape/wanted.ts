import { z } from 'zod';
import type { Fault } from '../report.ts';
import type { Written } from '../sheet/written.ts';
import { daysFromTo } from '../values/hours.ts';
import { isId } from '../values/plain-words.ts';
import { spoken, unwrapped } from './kinds.ts';

/** How a `wrong-kind` goes on. */
type Wanted = Omit<Fault, 'code'>;

/** Which of our kinds a place wants: a text, a list, or keys with values; and what helps to write it. */
export function wanted(issue: z.core.$ZodIssue, schema: z.ZodType, at: Written<unknown>): Wanted {
  const expected = issue.code === 'invalid_type' ? issue.expected : '';
  if (expected === 'array') return listWanted(schema, at);
  if (expected === 'object') return keysWanted(schema, at);
  return { variant: expected === 'record' ? 'own-keys' : 'text', facts: {} };
}

/** A list of records, or of texts: between brackets a comma would part a text that has one. */
function listWanted(schema: z.ZodType, at: Written<unknown>): Wanted {
  const element = schema instanceof z.ZodArray ? unwrapped(schema.element as z.ZodType) : schema;
  const text = typeof at.value === 'string' ? at.value.trim() : '';
  const asSpoken = spoken.get(schema);
  const understood = asSpoken && asWritten[asSpoken.of](text);
  if (understood) return understood;
  if (element instanceof z.ZodObject) return { variant: 'rows', facts: keysToWrite(element, text) };
  if (/^(none|no|nothing)$/i.test(text)) return { variant: 'none', facts: {} };
  if (!/[^\p{L}\p{N} .-]/u.test(text) || text.split(/,\s*/).every(isId))
    return { variant: 'list', facts: {} };
  return { variant: 'sentences', facts: { sentence: inOneLine(text) } };
}

/** How to write what somebody wrote as they speak, where that can be understood. */
const asWritten = {
  /** "Mon-Fri" */
  days: (text: string): Wanted | undefined => {
    const days = daysFromTo(text);
    return days ? { variant: 'days', facts: { days } } : undefined;
  },
  /** Who comes to a session is asked for in full: a number alone is what people write first. */
  people: (text: string): Wanted => ({
    variant: 'people',
    facts: { count: /^\d+/.exec(text)?.[0] ?? '…' },
  }),
};

/** Keys of a record: of a row of a list, or under a key. */
function keysWanted(schema: z.ZodType, at: Written<unknown>): Wanted {
  const isRow = typeof at.path.at(-1) === 'number' && typeof at.value === 'string';
  const text = isRow ? String(at.value) : '';
  return { variant: isRow ? 'row' : 'keys', facts: keysToWrite(schema as z.ZodObject, text) };
}

/** The key to begin with and, where a name stood alone, its value; and all keys that there are. */
export function keysToWrite({ shape }: z.ZodObject, text = ''): Fault['facts'] {
  const names = Object.keys(shape);
  const first = names.find((name) => !(shape[name] instanceof z.ZodOptional)) ?? names[0]!;
  const isName = ['id', 'use', 'guide', 'material'].includes(first) && isId(text);
  return { first, begin: isName ? text : '…', known: [...names].sort().join(', ') };
}

/** A text as one line of YAML, between quotes where it would be read as something else. */
function inOneLine(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ');
  const isPlain = /^[\p{L}\p{N}(]/u.test(line) && !/: | #|:$/.test(line);
  return isPlain ? line : `'${line.replaceAll("'", "''")}'`;
}
