import { z } from 'zod';
import { nearName } from '../../core/near-name.ts';
import type { Path, Raw, RawMap } from '../sheet.ts';
import { refuse, refuseKey, type Written } from '../written.ts';

/**
 * The same value, known to have the shape of a schema: what is missing, of the wrong kind or unknown is reported, and
 * what is wrong is taken out, so that the readers of the rest go on.
 */
export function checkShape<S extends z.ZodType>(at: Written<Raw>, schema: S): Written<z.infer<S>> {
  const result = schema.safeParse(at.value);
  if (result.success) return { ...at, value: result.data };
  const kept = structuredClone(at.value);
  for (const issue of result.error.issues) reportIssue(at, schema, issue, kept);
  return { ...at, value: kept as z.infer<S> };
}

function reportIssue(at: Written<Raw>, schema: z.ZodType, issue: z.core.$ZodIssue, kept: Raw): void {
  const path = issue.path as Path;
  if (issue.code === 'unrecognized_keys') {
    const known = knownKeys(schema, path);
    for (const key of issue.keys) {
      refuseUnknownKey(at, [...path, key], known);
      remove(kept, [...path, key]);
    }
    return;
  }
  const value = below(at.value, path);
  const problemAt = { ...at, value, path: [...at.path, ...path] };
  if (value === undefined) refuseMissing(at, path);
  else if (value === '') refuseKey(problemAt, { code: 'empty-value', facts: {} });
  else refuse(problemAt, { code: 'wrong-kind', variant: kindWanted(issue), facts: {} });
  remove(kept, path);
}

function refuseUnknownKey(at: Written<Raw>, path: Path, known: readonly string[]): void {
  const typed = String(path.at(-1));
  const near = known.find((key) => squeezed(key) === squeezed(typed)) ?? nearName(typed, known);
  const facts = { known: [...known].sort().join(', '), ...(near ? { near } : {}) };
  refuseKey(
    { ...at, value: undefined, path: [...at.path, ...path] },
    { code: 'unknown-key', ...(near ? { variant: 'near' } : {}), facts },
  );
}

/** `handsOn`, `Hands-On`, `hands_on`, `hands on` are all meant as `hands-on`. */
const squeezed = (key: string): string => key.toLowerCase().replace(/[-_ ]/g, '');

function refuseMissing(at: Written<Raw>, path: Path): void {
  const key = String(path.at(-1));
  const record = { ...at, value: undefined, path: [...at.path, ...path.slice(0, -1)] };
  refuse(record, { code: 'missing-key', variant: key, facts: { key } });
}

/** Which of our kinds a place wants: a text, a list, or keys with values. */
function kindWanted(issue: z.core.$ZodIssue): 'text' | 'list' | 'keys' {
  const expected = issue.code === 'invalid_type' ? issue.expected : '';
  return expected === 'array' ? 'list' : expected === 'object' || expected === 'record' ? 'keys' : 'text';
}

/** The keys that a schema knows at a path. */
function knownKeys(schema: z.ZodType, path: Path): readonly string[] {
  let inner = unwrapped(schema);
  for (const step of path) inner = unwrapped(innerAt(inner, step));
  return inner instanceof z.ZodObject ? Object.keys(inner.shape) : [];
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
