import type { Place } from '../../core/diagnostic.ts';
import { nameOfPath } from './name-of-path.ts';
import type { Fault, Report } from '../report.ts';
import type { Path, Raw, Sheet } from './sheet.ts';

/**
 * A value as its author wrote it, with the way to it: what every reader takes. A reader answers with the value in
 * its own type, or reports and answers `undefined`; it never throws, and its neighbours are read all the same.
 */
export interface Written<T = Raw> {
  readonly value: T;
  readonly path: Path;
  readonly file: OpenFile;
}

/** A file while it is read. Once something in it was refused, what is read of it is set aside at the end. */
export interface OpenFile {
  readonly sheet: Sheet;
  readonly report: Report;
  refused: boolean;
}

type Key<T> = keyof T & string;
type Field<T, K extends keyof T> = NonNullable<T[K]>;
type Maybe<T> = Written<T> | undefined;

/** The value under a key, or `undefined` where the author left it out. */
export function field<T, K extends Key<T>>(from: Maybe<T>, key: K): Maybe<Field<T, K>> {
  const value = from?.value[key];
  if (!from || value === undefined || value === null) return undefined;
  return { value, path: [...from.path, key], file: from.file };
}

/** The items of a list; those that were refused already are left out, the others keep their index. */
export function items<E>(list: Maybe<readonly E[]>): readonly Written<NonNullable<E>>[] {
  if (!list) return [];
  return list.value.flatMap((value, index) =>
    value === undefined || value === null ? [] : [{ value, path: [...list.path, index], file: list.file }],
  );
}

/** The keys of a map with their values. */
export function entries<V>(
  map: Maybe<Readonly<Record<string, V>>>,
): readonly (readonly [string, Written<NonNullable<V>>])[] {
  return Object.keys(map?.value ?? {}).flatMap((key) => {
    const value = field(map, key);
    return value ? [[key, value] as const] : [];
  });
}

/** Reports what is wrong with a value, and sets its file aside. */
export function refuse(at: Written<unknown>, fault: Fault, ...alsoAt: readonly Place[]): undefined {
  refuseAt(at, fault, at.file.sheet.valueAt(at.path), ...alsoAt);
}

/** The same, with the key underlined. */
export function refuseKey(at: Written<unknown>, fault: Fault): undefined {
  refuseAt(at, fault, at.file.sheet.keyAt(at.path));
}

function refuseAt(at: Written<unknown>, fault: Fault, place: Place, ...more: readonly Place[]): void {
  at.file.refused = true;
  const text = typeof at.value === 'string' ? at.value : marked(place);
  const facts = { text, ...nameOfPath(at.path, at.file.sheet), ...fault.facts };
  at.file.report({ ...fault, facts }, place, ...more);
}

const marked = ({ text, column, length }: Place): string => text.slice(column - 1, column - 1 + length);

/** Turns the text of a value into what it means; all readers of core have this shape. */
export type TextReader<V> = (text: string) => Meaning<V>;
export type Meaning<V> =
  { readonly ok: true; readonly value: V } | { readonly ok: false; readonly problem: Fault };

/** What a text means to a reader, or a report and `undefined`. */
export function readText<V>(at: Maybe<unknown>, reader: TextReader<V>): V | undefined {
  if (!at) return undefined;
  if (typeof at.value !== 'string') return refuse(at, { code: 'wrong-kind', variant: 'text', facts: {} });
  if (at.value.trim() === '') return refuseKey(at, { code: 'empty-value', facts: {} });
  const reading = reader(at.value);
  return reading.ok ? reading.value : refuse(at, reading.problem);
}

/** What the text under a key means to a reader. */
export function read<T, K extends Key<T>, V>(from: Maybe<T>, key: K, reader: TextReader<V>): V | undefined {
  return readText(field(from, key), reader);
}

/** What each text of a list means to a reader; empty where the list was left out. */
export function readEach<T, K extends Key<T>, V>(
  from: Maybe<T>,
  key: K,
  reader: TextReader<V>,
): readonly V[] {
  const list = field(from, key) as Maybe<readonly unknown[]>;
  return items(list).flatMap((item) => {
    const value = readText(item, reader);
    return value === undefined ? [] : [value];
  });
}

/** What each value of a map means to a reader, by its key. */
export function readNamed<T, K extends Key<T>, V>(
  from: Maybe<T>,
  key: K,
  reader: TextReader<V>,
): Readonly<Record<string, V>> {
  return mapNamed(field(from, key) as Maybe<Readonly<Record<string, unknown>>>, (value) =>
    readText(value, reader),
  );
}

/** A map read value by value; what could not be read is left out. */
export function mapNamed<R, V>(
  map: Maybe<Readonly<Record<string, R>>>,
  reader: (value: Written<NonNullable<R>>, key: string) => V | undefined,
): Readonly<Record<string, V>> {
  const pairs = entries(map).map(([key, value]) => [key, reader(value, key)] as const);
  return Object.fromEntries(pairs.filter((pair): pair is readonly [string, V & {}] => pair[1] !== undefined));
}

export { given } from '../../core/given.ts';
