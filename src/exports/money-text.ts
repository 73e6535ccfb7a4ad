import type { Program } from '../core/model/program.ts';
import type { Money } from '../core/model/values.ts';
import { printMoney } from '../core/money/money.ts';
import { type Exact, exact } from '../core/quantity/exact.ts';

/** `4.95 GBP`, exact, of a sum in the program's own currency. */
export function inOwnCurrency(amount: Exact, program: Program): string {
  return `${sumText(amount, program.currency, program)} ${program.currency}`;
}

/** `6.40 USD`, as it was written down. */
export function moneyText({ amount, currency }: Money, program: Program): string {
  return `${sumText(exact(amount), currency, program)} ${currency}`;
}

/** The number alone, padded to the minor digits of its currency. */
export function sumText(amount: Exact, currency: string, { minorDigits }: Program): string {
  return printMoney(amount, minorDigits[currency] ?? 2);
}
