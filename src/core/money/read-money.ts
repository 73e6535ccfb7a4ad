import type { Money } from '../model/values.ts';
import type { Exact } from '../quantity/exact.ts';
import { exact, exactText, rational } from '../quantity/exact.ts';
import { leadingNumber } from '../quantity/number.ts';
import type { Reading } from '../quantity/problem.ts';
import { about, andThen, read, refuse } from '../quantity/problem.ts';
import { tidy } from '../quantity/tidy.ts';

/** A sum with its ISO 4217 code: `6.40 GBP`. Whether the code exists is for the reader of the file to say. */
export function readMoney(text: string): Reading<Money> {
  const written = tidy(text);
  const symbol = /[\p{Sc}]/u.exec(written);
  if (symbol?.[0] === '€') return refuse('currency-missing.euro', text, { number: numberIn(written) });
  if (symbol)
    return refuse('currency-missing.symbol', text, { symbol: symbol[0], number: numberIn(written) });
  const number = leadingNumber(written.replace(/^([A-Z]{3}) (.+)$/, '$2 $1'));
  if (!number.ok) return /\p{L}/u.test(written) ? about(text, number) : withoutCurrency(text, number);
  return andThen(decimal(text, number.value), (value) => {
    return andThen(currencyIn(text, number.value), (currency) => read({ amount: rational(value), currency }));
  });
}

/** `14,50`: that the code is missing as well is told at once. */
function withoutCurrency(text: string, refusal: Extract<Reading<never>, { ok: false }>): Reading<never> {
  const { code, facts } = refusal.problem;
  return code === 'decimal-comma' ? refuse('currency-missing.comma', text, facts) : about(text, refusal);
}

interface Written {
  readonly value: Exact;
  readonly written: string;
  readonly rest: string;
}

function decimal(text: string, { value, written, rest }: Written): Reading<Exact> {
  if (value.s < 0n) return refuse('amount-negative', text);
  return written.includes('/') || /^[./,]/.test(rest) ? refuse('money-unreadable', text) : read(value);
}

function currencyIn(text: string, { written, rest }: Written): Reading<string> {
  const currency = rest.trim();
  if (/^[A-Z]{3}$/.test(currency)) return read(currency);
  if (currency === '') return refuse('currency-missing', text, { number: written });
  if (!/^\p{L}+$/u.test(currency)) return refuse('money-unreadable', text);
  if (!/^[A-Za-z]{3}$/.test(currency)) return refuse('currency-unknown', text, { currency, number: written });
  const nearest = currency.toUpperCase();
  return refuse('currency-unknown.near', text, { currency, number: written, nearest });
}

function numberIn(text: string): string {
  const number = /[\d.,]*\d/.exec(text)?.[0] ?? '';
  return number.replace(/^(\d+),(\d\d)$/, '$1.$2');
}

/** A wage for one hour: `18 GBP/h`, `18 GBP per hour`. */
export function readWage(text: string): Reading<Money> {
  const found = /^(.*\S) ?(?:\/|per |an ) ?(?:h|hr|hour)$/.exec(tidy(text));
  if (!found) return andThen(readMoney(text), () => refuse('unit-wrong.per-hour', text, {}));
  const wage = readMoney(found[1]!);
  return wage.ok ? wage : about(text, wage);
}

/** `6.40–7.10 GBP`, or a single sum, which is both ends. */
export function readMoneyRange(text: string): Reading<{ readonly least: Money; readonly most: Money }> {
  const ends = /^(.*\d(?: [A-Z]{3})?) ?(?:–|—|-|(?<= )to(?= )) ?(\d.*|[A-Z]{3} \d.*)$/.exec(tidy(text));
  if (!ends) return andThen(readMoney(text), (money) => read({ least: money, most: money }));
  const [most, lower] = [readMoney(ends[2]!), ends[1]!.trim()];
  if (!most.ok) return about(text, most);
  const least = readMoney(/[A-Z]/.test(lower) ? lower : `${lower} ${most.value.currency}`);
  if (!least.ok) return about(text, least);
  return rising(text, least.value, most.value);
}

function rising(text: string, least: Money, most: Money) {
  const facts = { least: written(least), most: written(most) };
  if (least.currency !== most.currency)
    return refuse('currency-mixed', text, { first: facts.least, second: facts.most });
  return exact(least.amount).gt(exact(most.amount))
    ? refuse('range-reversed', text, facts)
    : read({ least, most });
}

function written({ amount, currency }: Money): string {
  return `${exactText(exact(amount))} ${currency}`;
}
