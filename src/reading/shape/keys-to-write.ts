import { z } from 'zod';
import { asId } from '../../core/slug.ts';
import { isId } from '../values/plain-words.ts';
import { unwrapped } from './kinds.ts';

/**
 * The keys that an entry, or a set of keys, cannot do without, a line each, with what a text that stands in its place
 * says of them: “brief, 10 min” is `id: brief` and `takes: 10 min`. What only the author knows is `…`.
 */
export function keysToWrite({ shape }: z.ZodObject, text = ''): readonly string[] {
  const names = Object.keys(shape);
  const needed = names.filter(
    (name) => !(shape[name] instanceof z.ZodOptional) || oftenNeeded.includes(name),
  );
  const said = saidIn(text.trim(), names, needed);
  const written = names.filter((name) => needed.includes(name) || said[name] !== undefined);
  return (written.length > 0 ? written : names.slice(0, 1)).flatMap((name) =>
    linesOf(name, unwrapped(shape[name] as z.ZodType), said[name], Object.keys(said).length > 0 ? '' : text),
  );
}

/** Nothing is read without them where they belong, though the shape lets them be left out. */
const oftenNeeded: readonly string[] = ['amount', 'avoid', 'hands-on', 'harm'];

/** A list of entries begins with its first; any other key has its value beside it. */
function linesOf(name: string, schema: z.ZodType, said: string | undefined, text: string): readonly string[] {
  const entry = schema instanceof z.ZodArray ? unwrapped(schema.element as z.ZodType) : undefined;
  if (!(entry instanceof z.ZodObject)) return [`${name}: ${said ?? (entry ? '[…]' : '…')}`];
  const [first, ...others] = keysToWrite(entry, text);
  return [`${name}:`, `  - ${first!}`, ...others.map((line) => `    ${line}`)];
}

type Said = Readonly<Record<string, string>>;

/** What a text says of some keys: its time, the size in it, and what it is called or says. */
function saidIn(text: string, names: readonly string[], needed: readonly string[]): Said {
  const kept = names.includes('at') ? /^(\d[\d.]* ?\p{L}+) (?:in|at) (?:the |a )?(.+)$/u.exec(text) : null;
  if (kept) return { for: kept[1]!, at: kept[2]! };
  const size = names.includes('size') ? /\d[\d.]*(?: ?\p{L}+)? ?[x×] ?\d.*$/u.exec(text)?.[0] : undefined;
  if (size !== undefined) return { size };
  const timeKey = ['takes', 'hands-on'].find((name) => names.includes(name));
  const [, words = text, time] = (timeKey && lastTime.exec(text)) || [];
  return { ...(timeKey && time ? { [timeKey]: time } : {}), ...calledIn(words, names, needed) };
}

/** `brief, 10 min`, `brief (10 min)`, `brief: 10 minutes`. */
const lastTime = /^(.+?)(?:[,:;]| [-–—]| \()\s*(\d[\d. ]*(?:min|minutes?|h|hours?)(?: \d+ min)?)\)?$/i;

/** `id: brief` of a name; of a sentence the key that takes one, such as `ask`; `read: chapter 4` of “read chapter 4”. */
function calledIn(words: string, names: readonly string[], needed: readonly string[]): Said {
  const [, verb, what] = /^(read|watch|do) (.+)$/i.exec(words) ?? [];
  if (verb && what && names.includes(verb.toLowerCase())) return { [verb.toLowerCase()]: asValue(what) };
  const isQuestion = words.endsWith('?');
  const sentence = ['does', 'says', 'ask', 'what', 'when'].find(
    (name) => needed.includes(name) || (isQuestion && name === 'ask' && names.includes(name)),
  );
  if (sentence !== undefined) return words === '' ? {} : { [sentence]: asValue(words) };
  const name = ['id', 'use', 'guide', 'material'].find((key) => needed.includes(key) || key === names[0]);
  const [called = ''] = words.split(/[,;(]/);
  if (name === undefined || called === '') return {};
  if (isId(called)) return { [name]: called };
  const isPlain = name === 'id' && /^\p{L}[\p{L}\p{N} -]*$/u.test(called) && called.split(' ').length <= 4;
  return isPlain && called === words ? { id: asId(called) } : {};
}

/** The keys of the author's own that stand in a text: `1 = stops, 5 = goes on`, `1 to 5`. */
export function ownKeysToWrite(text: string): readonly string[] {
  const [, from, to] = /^(\d+) ?(?:-|–|to) ?(\d+)$/.exec(text) ?? [];
  if (from && to) return [`${from}: …`, `${to}: …`];
  const pairs = text.split(/[,;] */).map((pair) => /^([\w-]+) ?[=:] ?(.+)$/.exec(pair));
  return pairs.every((pair) => pair !== null)
    ? pairs.map(([, key, value]) => `${key!}: ${asValue(value!)}`)
    : ['…: …'];
}

/** A text as one line of YAML, between quotes where it would be read as something else. */
export function asValue(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ').trim();
  const isPlain = /^[\p{L}\p{N}(]/u.test(line) && !/: | #|:$/.test(line);
  return isPlain ? line : `'${line.replaceAll("'", "''")}'`;
}
