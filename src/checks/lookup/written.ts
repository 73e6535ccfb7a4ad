import type { Place } from '../../core/diagnostic.ts';
import type { Program } from '../../core/model/program.ts';
import type { Rational } from '../../core/model/values.ts';
import { roundMoney } from '../../core/money/money.ts';
import { type Exact, exact, exactText } from '../../core/quantity/exact.ts';

/** What stands at a place, in its author's own spelling, without quotes round it. */
export function written({ text, column, length }: Place): string {
  return text.slice(column - 1, column - 1 + length).replace(/^(["'])(.*)\1$/, '$2');
}

/** A length of time as an author writes it: 1990 minutes are "1 d 9 h 10 min". */
export function timeText(minutes: number): string {
  const parts = [
    [Math.floor(minutes / 1440), 'd'],
    [Math.floor((minutes % 1440) / 60), 'h'],
    [minutes % 60, 'min'],
  ] as const;
  const said = parts.filter(([count]) => count > 0).map(([count, unit]) => `${count} ${unit}`);
  return said.length > 0 ? said.join(' ') : '0 min';
}

/** The same of exact seconds: "40 s" where they are no whole minutes. */
export function durationText(seconds: Rational): string {
  const minutes = exact(seconds).div(60);
  if (minutes.d === 1n) return timeText(Number(minutes.n));
  const whole = minutes.floor();
  const left = `${exactText(minutes.sub(whole).mul(60))} s`;
  return whole.equals(0) ? left : `${timeText(Number(whole.n))} ${left}`;
}

/** Names in quotes with commas: “Weigh out”, “Pour”. */
export function quoted(names: readonly string[]): string {
  return names.map((name) => `“${name}”`).join(', ');
}

/** A sum in the program's currency, rounded to what can be paid: "7.35 GBP". */
export function moneyText(
  sum: Exact,
  { currency, minorDigits }: Pick<Program, 'currency' | 'minorDigits'>,
): string {
  return `${roundMoney(sum, minorDigits[currency]!, 'half-up')} ${currency}`;
}
