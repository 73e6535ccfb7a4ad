import type { Program } from '../model/program.ts';
import type { Money } from '../model/values.ts';
import type { Exact } from '../quantity/exact.ts';
import { decimalText, exact, exactText } from '../quantity/exact.ts';
import { largestRemainder } from '../quantity/round.ts';

/** The amount in the program's own currency; `undefined` where it has no rate for the other. */
export function inCurrency(money: Money, program: Pick<Program, 'currency' | 'exchange'>): Exact | undefined {
  if (money.currency === program.currency) return exact(money.amount);
  const exchange = program.exchange[money.currency];
  return exchange && exact(money.amount).mul(exact(exchange.rate));
}

/** `half-up` is away from zero; `half-even` to the even neighbour; `up` never less than is due. */
export type RoundingRule = 'half-up' | 'half-even' | 'up';

const rules: Readonly<Record<RoundingRule, (x: Exact) => Exact>> = {
  'half-up': (x) =>
    x
      .abs()
      .add(exact('1/2'))
      .floor()
      .mul(x.s < 0n ? -1 : 1),
  'half-even': (x) => {
    const up = x.add(exact('1/2')).floor();
    const isTie = up.sub(x).equals(exact('1/2'));
    return isTie && up.n % 2n === 1n ? up.sub(1) : up;
  },
  up: (x) => x.ceil(),
};

/** A sum rounded once, for display, with all its minor digits: `3.4` in pounds is `"3.40"`. */
export function roundMoney(x: Exact, digits: number, rule: RoundingRule): string {
  const minor = rules[rule](x.mul(exact(10 ** digits)));
  return decimalText(minor.s * minor.n, digits);
}

/** The exact sum for machines: padded to its minor digits, longer where exact needs it, else a fraction. */
export function printMoney(x: Exact, digits: number): string {
  const text = exactText(x);
  if (text.includes('/')) return text;
  const [whole, decimals = ''] = text.split('.');
  return digits === 0 && decimals === '' ? whole! : `${whole}.${decimals.padEnd(digits, '0')}`;
}

/**
 * A sum in minor units (pence, cents) shared out by weight, so that the shares add up to it exactly.
 *
 * @param totalMinor  Whole; a sum below zero is shared as its opposite is.
 * @returns Ties go to the first.
 */
export function allocate(totalMinor: number, weights: readonly Exact[]): number[] {
  const shares = largestRemainder(Math.abs(totalMinor), weights);
  return totalMinor < 0 ? shares.map((share) => (share === 0 ? 0 : -share)) : shares;
}
