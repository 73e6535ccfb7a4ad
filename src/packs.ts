import { exact, rational, type Exact } from './core/quantity/exact.ts';
import { askedList, askedObject } from './core/solve/asked.ts';
import { leastCostPacks as leastCost } from './core/solve/packs/least-cost-packs.ts';

/** A whole number, or an exact fraction or decimal as text: `3`, `"7/2"`, `"8.99"`. */
export type ExactNumber = number | string;

/** A pack as a shop sells it. */
export interface Pack {
  /** Above zero; all in one unit, that of the need. */
  readonly holds: ExactNumber;
  /** Zero or more; all in one currency. */
  readonly price: ExactNumber;
}

export interface PackProblem {
  /** Zero or more. */
  readonly need: ExactNumber;
  /** At least one, unless nothing is needed. */
  readonly packs: readonly Pack[];
}

/** `cost` and `left` are exact: `"27"`, or a fraction in lowest terms, `"2697/100"`. */
export interface PacksToBuy {
  /** How many of each pack, in the order of the packs given. */
  readonly counts: readonly number[];
  readonly cost: string;
  /** What is left over. */
  readonly left: string;
}

/**
 * Whole packs to buy so that at least what is needed is in hand, at the least price. Of equal prices the least is left
 * over, then the fewest packs are bought, then most of the pack listed first. Exact throughout.
 *
 * ```js
 * import { leastCostPacks } from 'benchwright/packs';
 *
 * leastCostPacks({ need: 101, packs: [{ holds: 50, price: '8.99' }, { holds: 200, price: '29' }] });
 * // { counts: [3, 0], cost: '2697/100', left: '49' }
 * ```
 *
 * @throws {TypeError} Where something is of the wrong kind, and {RangeError} where a number is out of range. The message
 *         says which.
 */
export function leastCostPacks(problem: PackProblem): PacksToBuy {
  const { need, packs } = askedObject('the problem', problem);
  const needed = askedExact('need', need);
  const asked = askedList('packs', packs, needed.equals(0) ? 0 : 1).map((pack, at) =>
    askedPack(`packs[${at}]`, pack),
  );
  const { counts, cost, left } = leastCost(needed, asked);
  return { counts, cost: rational(cost), left: rational(left) };
}

function askedPack(name: string, pack: unknown): { holds: Exact; price: Exact } {
  const { holds, price } = askedObject(name, pack);
  const held = askedExact(`${name}.holds`, holds);
  if (held.equals(0)) throw new RangeError(`${name}.holds must be above zero.`);
  return { holds: held, price: askedExact(`${name}.price`, price) };
}

function askedExact(name: string, value: unknown): Exact {
  if (typeof value !== 'string' && typeof value !== 'number')
    throw new TypeError(`${name} must be a whole number, or a fraction or decimal as text.`);
  if (typeof value === 'string' ? !spelled.test(value) : !Number.isSafeInteger(value))
    throw new RangeError(
      `${name} is ${JSON.stringify(value)}: write a whole number, or text such as "7/2" or "8.99", so that it is exact.`,
    );
  const number = exact(value);
  if (number.lt(0)) throw new RangeError(`${name} must be zero or more, not ${value}.`);
  return number;
}
const spelled = /^-?\d+(\.\d+|\/0*[1-9]\d*)?$/;
