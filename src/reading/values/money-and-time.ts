import currencyCodes from 'currency-codes';
import type { Duration, Money } from '../../core/model/values.ts';
import { readMoney, readMoneyRange, readWage } from '../../core/money/read-money.ts';
import { nearName } from '../../core/near-name.ts';
import { readDuration } from '../../core/time/duration.ts';
import { means, wrong } from './plain-words.ts';
import type { Fault } from '../report.ts';
import type { Meaning, TextReader } from '../sheet/written.ts';

/** Minor digits of a currency by ISO 4217 (`Intl` differs for some), or `undefined` where there is no such code. */
export function minorDigitsOf(currency: string): number | undefined {
  return currencyCodes.code(currency)?.digits;
}

/** An ISO 4217 code, in capitals. */
export const readCurrency: TextReader<string> = (text) => {
  const code = text.trim();
  return isCurrency(code) ? means(code) : unknownCurrency('currency-code-unknown', code, {});
};

const isCurrency = (code: string): boolean =>
  code === code.toUpperCase() && minorDigitsOf(code) !== undefined;

function unknownCurrency(problem: string, code: string, facts: Fault['facts']): Meaning<never> {
  const nearest = nearName(code, currencyCodes.codes());
  const near = nearest ? { nearest } : {};
  return wrong(problem, { ...facts, currency: code, ...near }, nearest ? 'near' : undefined);
}

/** A sum of money in a currency that exists. */
export const readPrice: TextReader<Money> = (text) =>
  inKnownCurrency(text, readMoney(text), ({ currency }) => currency);

/** The same of a wage: `18 GBP/h`. */
export const readLabour: TextReader<Money> = (text) =>
  inKnownCurrency(text, readWage(text), ({ currency }) => currency);

/** The same of a range: `6.40–7.10 GBP`. */
export const readPriceRange: TextReader<{ readonly least: Money; readonly most: Money }> = (text) =>
  inKnownCurrency(text, readMoneyRange(text), ({ most }) => most.currency);

function inKnownCurrency<T>(text: string, sum: Meaning<T>, currencyOf: (sum: T) => string): Meaning<T> {
  if (!sum.ok || isCurrency(currencyOf(sum.value))) return sum;
  const code = currencyOf(sum.value);
  return unknownCurrency('currency-unknown', code, { number: text.replaceAll(code, '').trim() });
}

/** A time of the clock, which may not be in working days: hands and waits go by minutes. */
export const readClockTime: TextReader<Duration> = (text) => {
  const time = readDuration(text);
  return time.ok && 'workingDays' in time.value ? wrong('working-days-not-here') : time;
};
