import { readCount } from '../../quantity/read.ts';
import { isDay } from '../../time/day.ts';
import { readDuration } from '../../time/duration.ts';
import { minutesOf } from '../../time/minutes.ts';
import { wallMinute } from '../time/moment.ts';
import { batchUpTo } from './demanded.ts';

/** What the text after an option, on a command line or in an address, means; `undefined` where it means nothing. */
export type OptionReader<T> = (text: string) => T | undefined;

export const wholeNumber =
  (least: number, most: number): OptionReader<number> =>
  (written) => {
    const number = readCount(written);
    return number.ok && number.value >= least && number.value <= most ? number.value : undefined;
  };

export const readBatch = wholeNumber(1, batchUpTo);
export const readBuilders = wholeNumber(1, 100);

const minutesAYear = 365 * 1440;

/** A length of time on the clock, in whole minutes. */
export const readMinutes: OptionReader<number> = (written) => {
  const reading = readDuration(written);
  if (!reading.ok || !('seconds' in reading.value)) return undefined;
  const whole = minutesOf(reading.value);
  return whole <= minutesAYear ? whole : undefined;
};

/** `2026-11-30T09:00`, or a day alone: from its first minute on. */
export const readTime: OptionReader<string> = (written) => {
  const whole = isDay(written) ? `${written}T00:00` : written.replace(' ', 'T');
  return wallMinute(whole) === undefined ? undefined : whole;
};
