import { isDay } from '../core/time/day.ts';
import { batchUpTo } from '../core/plan/demanded.ts';
import { wallMinute } from '../core/plan/clock.ts';
import { readCount, readShare } from '../core/quantity/read.ts';

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
  format: oneOf('text', 'json'),
  out: text,
  spares: share,
  start: time,
  stock: text,
  today: day,
  workspace: text,
} as const satisfies Readonly<Record<string, Reader<unknown>>>;

export type ValueName = keyof typeof readers;

/** The options that are there or not. */
export const flags = ['help', 'trace'] as const;
export type FlagName = (typeof flags)[number];
export type OptionName = ValueName | FlagName;

type ValueOf<R> = R extends Reader<infer T> ? T : never;

/** The options of a call, read. */
export type Values = { readonly [K in ValueName]?: ValueOf<(typeof readers)[K]> } & {
  readonly [K in FlagName]?: true;
};
