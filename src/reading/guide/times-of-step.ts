import type { Step, Wait, WaitTime } from '../../core/model/guide.ts';
import type { ByLevel, Duration, Varied } from '../../core/model/values.ts';
import { isByLevel, isMap, readVaried, refuseMapForText } from '../values/by-level.ts';
import { readClockTime } from '../values/money-and-time.ts';
import { isId, means, wrong } from '../values/plain-words.ts';
import { handsOnShape, waitShape } from '../shape/guide-shape.ts';
import type { Raw, RawMap } from '../sheet/sheet.ts';
import {
  entries,
  field,
  mapNamed,
  read,
  readText,
  refuseKey,
  type Meaning,
  type Written,
} from '../sheet/written.ts';
import { variedTime } from './varied-amounts.ts';

type Maybe = Written<Raw> | undefined;
type Levels = readonly string[];
type HandsOn = Step['handsOn'];

/** What stands where a step says no time. */
export const noTime: Duration = { seconds: '0' };

/**
 * `hands-on:` of a step, per run and per model in it; a bare time is once per run.
 *
 *     10 min      { once: 4 min, each: 1 min }      { shallow: 10 min, deep: { once: 10 min, each: 2 min } }
 */
export function readHandsOn(at: Maybe, levels: Levels): HandsOn {
  const read = readVaried(at, levels, (one) =>
    readHandsOnOnce(one, isByLevel(at!.value, levels) ? [] : levels),
  );
  if (!read) return { once: noTime, each: noTime };
  if (!('byLevel' in read)) return read;
  return { once: eachLevel(read, ({ once }) => once), each: eachLevel(read, ({ each }) => each) };
}

function readHandsOnOnce(at: Written<Raw>, levels: Levels): HandsOn {
  const keys = Object.keys(handsOnShape.shape);
  if (!hasKeyOf(at.value, keys)) return { once: variedTime(at, levels) ?? noTime, each: noTime };
  const map = at as Written<RawMap>;
  refuseOtherKeys(map, keys);
  const time = (key: string): Varied<Duration> => variedTime(field(map, key), levels) ?? noTime;
  return { once: time('once'), each: time('each') };
}

/**
 * `wait:` of a step: from hands-off, longer in some rooms, or as the directions of a material say.
 *
 *     20 min      { usual: 12 h, if-damp: 24 h }      { as: contact-adhesive.full, if-damp: 24 h }
 */
export function readWait(at: Maybe, levels: Levels): Wait | undefined {
  const read = readVaried(at, levels, (one) => readWaitOnce(one, isByLevel(at!.value, levels) ? [] : levels));
  if (!read || !('byLevel' in read)) return read;
  const rooms = Object.keys(roomKeys).filter((room) =>
    Object.values(read.byLevel).some(({ ifRoom }) => isRoom(room) && ifRoom[room]),
  );
  const ifRoom = rooms
    .filter(isRoom)
    .map((room) => [room, eachLevel(read, (wait) => wait.ifRoom[room] ?? wait.usual)]);
  return {
    usual: eachLevel(read, ({ usual }) => usual),
    ifRoom: Object.fromEntries(ifRoom) as Wait['ifRoom'],
  };
}

const roomKeys = { cold: 'if-cold', damp: 'if-damp', hot: 'if-hot' } as const;
type Room = keyof typeof roomKeys;
const isRoom = (room: string): room is Room => room in roomKeys;

function readWaitOnce(at: Written<Raw>, levels: Levels): Wait | undefined {
  const keys = Object.keys(waitShape.shape);
  if (!hasKeyOf(at.value, keys)) {
    const usual = variedTime(at, levels);
    return usual && { usual, ifRoom: {} };
  }
  const map = at as Written<RawMap>;
  refuseOtherKeys(map, keys);
  const usual = field(map, 'as')
    ? read(map, 'as', readDirectionsTime)
    : waitTime(field(map, 'usual'), levels);
  if (!field(map, 'as') && !field(map, 'usual'))
    refuseKey(map, { code: 'missing-key', variant: 'usual', facts: { key: 'usual' } });
  const rooms = entries(map).filter(([key]) => key.startsWith('if-'));
  const ifRoom = rooms.map(([key, time]) => [key.slice('if-'.length), waitTime(time, levels)] as const);
  return usual && { usual, ifRoom: Object.fromEntries(ifRoom.filter(([, time]) => time !== undefined)) };
}

/** A time, or `{ as: contact-adhesive.full }`; each may be by level. */
function waitTime(at: Maybe, levels: Levels): Varied<WaitTime> | undefined {
  return readVaried(at, levels, (one): WaitTime | undefined => {
    if (typeof one.value === 'string') return readText(one, readClockTime);
    if (!hasKeyOf(one.value, ['as'])) return refuseMapForText(one, levels);
    refuseOtherKeys(one as Written<RawMap>, ['as']);
    return read(one as Written<RawMap>, 'as', readDirectionsTime);
  });
}

/** `contact-adhesive.full`: a time that the directions of a material give. */
function readDirectionsTime(text: string): Meaning<WaitTime> {
  const [material = '', time = '', ...more] = text.trim().split('.');
  return isId(material) && time !== '' && more.length === 0
    ? means({ material, time })
    : wrong('directions-time-unreadable');
}

/** `use-within:` of a step: a hold limit, or one for each of the steps after it. */
export function readUseWithin(at: Maybe, levels: Levels): Step['useWithin'] {
  if (!at) return { byStep: {} };
  if (!isMap(at.value) || isByLevel(at.value, levels)) {
    const any = variedTime(at, levels);
    return any ? { any, byStep: {} } : { byStep: {} };
  }
  return { byStep: mapNamed(at as Written<RawMap>, (time) => variedTime(time, levels)) };
}

function hasKeyOf(value: Raw, keys: readonly string[]): boolean {
  return isMap(value) && keys.some((key) => Object.hasOwn(value, key));
}

function refuseOtherKeys(map: Written<RawMap>, known: readonly string[]): void {
  for (const [key, value] of entries(map)) {
    if (!known.includes(key)) refuseKey(value, { code: 'unknown-key', facts: { known: known.join(', ') } });
  }
}

/** One field of a value that was read level by level, as a map by level. */
function eachLevel<T, V>(read: ByLevel<T>, pick: (one: T) => Varied<V>): ByLevel<V> {
  const pairs = Object.entries(read.byLevel).map(([level, one]) => [level, pick(one) as V] as const);
  return { byLevel: Object.fromEntries(pairs) };
}
