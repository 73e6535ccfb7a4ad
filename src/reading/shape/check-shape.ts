import { z } from 'zod';
import { nearName } from '../../core/near-name.ts';
import type { Path, Raw, RawMap } from '../sheet/sheet.ts';
import { refuse, refuseKey, type Written } from '../sheet/written.ts';
import type { Fault } from '../report.ts';
import { daysFromTo } from '../values/hours.ts';
import { isId } from '../values/plain-words.ts';

/**
 * The same value, known to have the shape of a schema: what is missing, of the wrong kind or unknown is reported, and
 * what is wrong is taken out, so that the readers of the rest go on. A mistyped key is read as the one that it was
 * meant to be, so that the other is not missed as well: one cause, one message.
 */
export function checkShape<S extends z.ZodType>(at: Written<Raw>, schema: S): Written<z.infer<S>> {
  const result = schema.safeParse(at.value);
  if (result.success) return { ...at, value: result.data };
  const kept = { ...at, value: structuredClone(at.value) };
  for (const issue of result.error.issues) {
    if (issue.code === 'unrecognized_keys') mendKeys(kept, schema, issue.path as Path, issue.keys);
  }
  for (const issue of schema.safeParse(kept.value).error?.issues ?? []) refuseValue(kept, schema, issue);
  return kept as Written<z.infer<S>>;
}

/** Reports keys that a schema does not know; the mistyped ones get the name they were meant to have, the others go. */
function mendKeys(at: Written<Raw>, schema: z.ZodType, path: Path, keys: readonly string[]): void {
  const known = knownKeys(schema, path);
  const record = below(at.value, path) as Record<string, Raw>;
  for (const key of keys) {
    const near = meantKey(
      key,
      known.filter((one) => !Object.hasOwn(record, one)),
    );
    refuseUnknownKey(at, [...path, key], known, near);
    if (near !== undefined) record[near] = record[key]!;
    delete record[key];
  }
}

function meantKey(typed: string, free: readonly string[]): string | undefined {
  return free.find((key) => squeezed(key) === squeezed(typed)) ?? nearName(typed, free);
}

/** `handsOn`, `Hands-On`, `hands_on`, `hands on` are all meant as `hands-on`. */
const squeezed = (key: string): string => key.toLowerCase().replace(/[-_ ]/g, '');

function refuseUnknownKey(
  at: Written<Raw>,
  path: Path,
  known: readonly string[],
  near: string | undefined,
): void {
  const facts = { known: [...known].sort().join(', '), ...(near ? { near } : {}) };
  const fault = { code: 'unknown-key', facts, ...(near ? { variant: 'near' } : {}) };
  refuseKey({ ...at, value: undefined, path: [...at.path, ...path] }, fault);
}

/** Reports a value that is missing, empty or of the wrong kind, and takes it out. */
function refuseValue(at: Written<Raw>, schema: z.ZodType, issue: z.core.$ZodIssue): void {
  const path = issue.path as Path;
  const value = below(at.value, path);
  const problemAt = { ...at, value, path: [...at.path, ...path] };
  if (value === undefined) refuseMissing(at, path);
  else if (value === '') refuseKey(problemAt, { code: 'empty-value', facts: {} });
  else refuse(problemAt, { code: 'wrong-kind', ...wanted(issue, schemaAt(schema, path), problemAt) });
  remove(at.value, path);
}

function refuseMissing(at: Written<Raw>, path: Path): void {
  const key = String(path.at(-1));
  const record = { ...at, value: undefined, path: [...at.path, ...path.slice(0, -1)] };
  refuse(record, { code: 'missing-key', variant: key, facts: { key } });
}

/** Which of our kinds a place wants: a text, a list, or keys with values; and what helps to write it. */
function wanted(issue: z.core.$ZodIssue, schema: z.ZodType, at: Written<unknown>): Wanted {
  const expected = issue.code === 'invalid_type' ? issue.expected : '';
  if (expected === 'array') return listWanted(schema, at);
  if (expected === 'object') return keysWanted(schema, at);
  return { variant: expected === 'record' ? 'own-keys' : 'text', facts: {} };
}
type Wanted = Omit<Fault, 'code'>;

/** A list of records, or of texts: between brackets a comma would part a text that has one. */
function listWanted(schema: z.ZodType, at: Written<unknown>): Wanted {
  const element = schema instanceof z.ZodArray ? unwrapped(schema.element as z.ZodType) : schema;
  const text = typeof at.value === 'string' ? at.value.trim() : '';
  if (element instanceof z.ZodObject) return rowsWanted(element, at.path, text);
  if (/^(none|no|nothing)$/i.test(text)) return { variant: 'none', facts: {} };
  const days = at.path.at(-1) === 'days' ? daysFromTo(text) : undefined;
  if (days) return { variant: 'days', facts: { days } };
  if (!/[^\p{L}\p{N} .-]/u.test(text) || text.split(/,\s*/).every(isId))
    return { variant: 'list', facts: {} };
  return { variant: 'sentences', facts: { sentence: inOneLine(text) } };
}

/** Who comes to a session is asked for in full: a number alone is what people write first. */
function rowsWanted(element: z.ZodObject, path: Path, text: string): Wanted {
  const count = /^\d+/.exec(text)?.[0] ?? '…';
  const isOfCohort = path.join('/') === 'cohort/people';
  return isOfCohort
    ? { variant: 'people', facts: { count } }
    : { variant: 'rows', facts: keysToWrite(element, text) };
}

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

/** The keys that a schema knows at a path. */
function knownKeys(schema: z.ZodType, path: Path): readonly string[] {
  const inner = schemaAt(schema, path);
  return inner instanceof z.ZodObject ? Object.keys(inner.shape) : [];
}

function schemaAt(schema: z.ZodType, path: Path): z.ZodType {
  let inner = unwrapped(schema);
  for (const step of path) inner = unwrapped(innerAt(inner, step));
  return inner;
}

function innerAt(schema: z.ZodType, step: string | number): z.ZodType {
  if (schema instanceof z.ZodObject) return schema.shape[step] as z.ZodType;
  if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
  return schema instanceof z.ZodRecord ? (schema.valueType as z.ZodType) : schema;
}

const unwrapped = (schema: z.ZodType): z.ZodType =>
  schema instanceof z.ZodOptional ? unwrapped(schema.unwrap() as z.ZodType) : schema;

function below(value: Raw | undefined, path: Path): Raw | undefined {
  let inner = value;
  for (const step of path) inner = inner === undefined ? undefined : (inner as RawMap)[step];
  return inner;
}

/** Takes a key out of a map; of a list the item becomes a hole, so that the others keep their index. */
function remove(top: Raw, path: Path): void {
  const parent = below(top, path.slice(0, -1)) as Record<string, Raw> | undefined;
  if (parent === undefined || path.length === 0) return;
  if (Array.isArray(parent)) Object.assign(parent, { [path.at(-1)!]: undefined });
  else delete parent[path.at(-1)!];
}
