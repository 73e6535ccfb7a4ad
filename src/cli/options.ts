import { isDay } from '../core/time/day.ts';
import { batchUpTo } from '../core/plan/demand/demanded.ts';
import { wallMinute } from '../core/plan/time/moment.ts';
import { readCount, readRatio, readShare } from '../core/quantity/read.ts';
import { readDuration } from '../core/time/duration.ts';
import { minutesUp, secondsOf } from '../core/time/minutes.ts';
import type { CommandName } from './command.ts';

/** What the text after an option means; `undefined` where it means nothing. A flag has no reader. */
type Reader<T> = (text: string) => T | undefined;

const text: Reader<string> = (written) => (written === '' ? undefined : written);

const oneOf =
  <W extends string>(...words: readonly W[]): Reader<W> =>
  (written) =>
    words.find((word) => word === written);

export const wholeNumber =
  (least: number, most: number): Reader<number> =>
  (written) => {
    const number = readCount(written);
    return number.ok && number.value >= least && number.value <= most ? number.value : undefined;
  };

const share: Reader<string> = (written) => {
  const reading = readShare(written);
  return reading.ok ? reading.value : undefined;
};

const times: Reader<string> = (written) => {
  const reading = readRatio(written);
  return reading.ok ? reading.value : undefined;
};

const minutesAYear = 365 * 1440;

/** A length of time on the clock, in whole minutes. */
const minutes: Reader<number> = (written) => {
  const reading = readDuration(written);
  if (!reading.ok || !('seconds' in reading.value)) return undefined;
  const whole = minutesUp(secondsOf(reading.value));
  return whole <= minutesAYear ? whole : undefined;
};

const day: Reader<string> = (written) => (isDay(written) ? written : undefined);

/** `2026-11-30T09:00`, or a day alone: from its first minute on. */
const time: Reader<string> = (written) => {
  const whole = isDay(written) ? `${written}T00:00` : written.replace(' ', 'T');
  return wallMinute(whole) === undefined ? undefined : whole;
};

/** The options that take a value, each with how it is read. */
export const readers = {
  batch: wholeNumber(1, batchUpTo),
  builders: wholeNumber(1, 100),
  edition: oneOf('trainees', 'staff'),
  effort: times,
  format: oneOf('text', 'json', 'csv', 'ics'),
  'good-until': time,
  list: oneOf('shopping', 'days'),
  margin: minutes,
  out: text,
  'ready-by': time,
  spares: share,
  start: time,
  stock: text,
  today: day,
  workspace: text,
} as const satisfies Readonly<Record<string, Reader<unknown>>>;

export type ValueName = keyof typeof readers;

/** Where a command takes fewer values than others. */
const narrower: { readonly [C in CommandName]?: { readonly [N in ValueName]?: Reader<unknown> } } = {
  check: { format: oneOf('text', 'json') },
};

export function readerOf(command: CommandName, name: ValueName): Reader<unknown> {
  return narrower[command]?.[name] ?? readers[name];
}

/** The options that are there or not. */
export const flags = ['help', 'trace', 'what-if'] as const;
export type FlagName = (typeof flags)[number];
export type OptionName = ValueName | FlagName;

type ValueOf<R> = R extends Reader<infer T> ? T : never;

/** The options of a call, read. */
export type Values = { readonly [K in ValueName]?: ValueOf<(typeof readers)[K]> } & {
  readonly [K in FlagName]?: true;
};
