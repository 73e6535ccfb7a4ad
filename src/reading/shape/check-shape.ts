import { z } from 'zod';
import { nearName } from '../../core/near-name.ts';
import { asId } from '../../core/slug.ts';
import { otherWordsForKeys } from '../../words/diagnostics/names-of-keys.ts';
import type { Path, Raw, RawMap } from '../sheet/sheet.ts';
import { refuse, refuseKey, type Written } from '../sheet/written.ts';
import { asValue } from './keys-to-write.ts';
import { unwrapped } from './kinds.ts';
import { wanted } from './wanted.ts';

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
  const alike = otherWordsForKeys[squeezed(typed)] ?? [];
  return (
    free.find((key) => squeezed(key) === squeezed(typed)) ??
    nearName(typed, free) ??
    alike.find((key) => free.includes(key))
  );
}

/** `handsOn`, `Hands-On`, `hands_on`, `hands on` are all meant as `hands-on`. */
const squeezed = (key: string): string => key.toLowerCase().replace(/[-_ ]/g, '');

function refuseUnknownKey(
  at: Written<Raw>,
  path: Path,
  known: readonly string[],
  near: string | undefined,
): void {
  const listed = { known: [...known].sort().join(', ') };
  const keyAt = { ...at, value: undefined, path: [...at.path, ...path] };
  if (near) return refuseKey(keyAt, { code: 'unknown-key', variant: 'near', facts: { ...listed, near } });
  const value = known.includes('set') ? asSetting(below(at.value, path)) : undefined;
  if (value === undefined) return refuseKey(keyAt, { code: 'unknown-key', facts: listed });
  refuseKey(keyAt, { code: 'unknown-key', variant: 'setting', facts: { ...listed, value } });
}

/** `60 °C`, or `{ shallow: 4 mm, deep: 8 mm }`, as a setting of the step is written; nothing of any other value. */
function asSetting(value: Raw | undefined): string | undefined {
  if (typeof value === 'string') return /^\d/.test(value) ? asValue(value) : undefined;
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return undefined;
  const texts = Object.entries(value).map(([key, text]) => [key, asSetting(text)] as const);
  const isSaid = texts.length > 0 && texts.every(([, text]) => text !== undefined);
  return isSaid ? `{ ${texts.map(([key, text]) => `${key}: ${text!}`).join(', ')} }` : undefined;
}

/** Reports a value that is missing, empty or of the wrong kind, and takes it out. */
function refuseValue(at: Written<Raw>, schema: z.ZodType, issue: z.core.$ZodIssue): void {
  const path = issue.path as Path;
  const value = below(at.value, path);
  const problemAt = { ...at, value, path: [...at.path, ...path] };
  const wants = issue.code === 'invalid_type' ? issue.expected : '';
  if (value === undefined) refuseMissing(at, path);
  else if (value === '') refuseKey(problemAt, { code: 'empty-value', facts: {} });
  else refuse(problemAt, { code: 'wrong-kind', ...wanted(issue, schemaAt(schema, path), problemAt) });
  remove(at.value, path, wants);
}

function refuseMissing(at: Written<Raw>, path: Path): void {
  const key = String(path.at(-1));
  const record = { ...at, value: undefined, path: [...at.path, ...path.slice(0, -1)] };
  const facts = key === 'id' ? { key, id: idOfName(below(at.value, path.slice(0, -1))) } : { key };
  refuse(record, { code: 'missing-key', variant: key, facts });
}

/** The id that a record without one could have by what it is called. */
function idOfName(record: Raw | undefined): string {
  const { name, heading } = (record ?? {}) as RawMap;
  const called = name ?? heading;
  return typeof called === 'string' ? asId(called) : '…';
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

function below(value: Raw | undefined, path: Path): Raw | undefined {
  let inner = value;
  for (const step of path) inner = inner === undefined ? undefined : (inner as RawMap)[step];
  return inner;
}

/**
 * Takes a key out of a map; of a list the item becomes a hole, so that the others keep their index. What was no list
 * becomes an empty one, so that it is not missed as well.
 */
function remove(top: Raw, path: Path, wanted: string): void {
  const parent = below(top, path.slice(0, -1)) as Record<string, Raw> | undefined;
  if (parent === undefined || path.length === 0) return;
  if (Array.isArray(parent)) Object.assign(parent, { [path.at(-1)!]: undefined });
  else if (wanted === 'array' && parent[path.at(-1)!] !== undefined) parent[path.at(-1)!] = [];
  else delete parent[path.at(-1)!];
}
