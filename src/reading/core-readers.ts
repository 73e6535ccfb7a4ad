import currencyCodes from 'currency-codes';
import type { Duration, Money, Size } from '../core/model/values.ts';
import { readMoney, readWage } from '../core/money/money.ts';
import { nearName } from '../core/near-name.ts';
import { readQuantity, readSize } from '../core/quantity/read.ts';
import { readDuration } from '../core/time/duration.ts';
import { means, wrong } from './plain-readers.ts';
import type { Meaning, TextReader } from './written.ts';

/** Minor digits of a currency by ISO 4217 (`Intl` differs for some), or `undefined` where there is no such code. */
export function minorDigitsOf(currency: string): number | undefined {
  return currencyCodes.code(currency)?.digits;
}

/** An ISO 4217 code, in capitals. */
export const readCurrency: TextReader<string> = (text) => {
  const code = text.trim();
  if (minorDigitsOf(code) !== undefined && code === code.toUpperCase()) return means(code);
  const nearest = nearName(code, currencyCodes.codes());
  return wrong('currency-unknown', { currency: code, ...(nearest ? { nearest } : {}) }, nearest ? 'near' : undefined);
};

/** A sum of money in a currency that exists. */
export const readPrice: TextReader<Money> = (text) => inKnownCurrency(readMoney(text));

/** The same of a wage: `18 GBP/h`. */
export const readLabour: TextReader<Money> = (text) => inKnownCurrency(readWage(text));

function inKnownCurrency(money: Meaning<Money>): Meaning<Money> {
  if (!money.ok) return money;
  const known = readCurrency(money.value.currency);
  return known.ok ? money : known;
}

/** A time of the clock, which may not be in working days: hands and waits go by minutes. */
export const readClockTime: TextReader<Duration> = (text) => {
  const time = readDuration(text);
  return time.ok && 'workingDays' in time.value ? wrong('working-days-not-here') : time;
};

/** Two sides of a sheet or three of a body; of a rod the one length. */
export const readSizeOrLength: TextReader<Size> = (text) => {
  const size = readSize(text);
  if (size.ok) return size;
  const length = readQuantity(text);
  return length.ok && length.value.unit !== '' ? means({ sides: [length.value] }) : size;
};
