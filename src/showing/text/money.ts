import type { Exact } from '../../core/quantity/exact.ts';
import type { Program } from '../../core/model/program.ts';
import { roundMoney } from '../../core/money/money.ts';
import { currencySigns } from '../../words/calendar.ts';
import { planWords } from '../../words/plan.ts';
import { fill, noBreak } from './fill.ts';
import { withThousands } from './numbers.ts';

/** Minor digits of the currencies that a workspace uses, as reading found them in ISO 4217. */
type Purse = Pick<Program, 'currency' | 'minorDigits'>;

/**
 * An amount in the program's currency: "£2.83". Rounded once, here.
 *
 * @param rule  Half up for what a thing costs; up for what has to be paid.
 */
export function showMoney(amount: Exact, purse: Purse, rule: 'half-up' | 'up' = 'half-up'): string {
  const digits = purse.minorDigits[purse.currency] ?? 2;
  const number = withThousands(roundMoney(amount, digits, rule));
  const sign = currencySigns[purse.currency];
  return sign ? `${sign}${number}` : `${purse.currency}${noBreak}${number}`;
}

/** A sum that a missing price may raise says so: "at least £41.20". */
export function showSum(amount: Exact, purse: Purse, complete: boolean, rule?: 'half-up' | 'up'): string {
  const text = showMoney(amount, purse, rule);
  return complete ? text : fill(planWords.atLeast, { amount: text });
}
