import { choices } from './choices.ts';
import type { Need } from './needs.ts';
import type { PieceKind } from './pieces.ts';
import { sheetsOf, sumOver, weigh, type Fill, type Filled, type Stock, type Work } from './stock.ts';

/** What is to be cut from what, what that takes at least, and how much may be done about it. */
export interface Question {
  readonly pieces: readonly PieceKind[];
  readonly stock: readonly Stock[];
  readonly needs: readonly Need[];
  readonly fill: Fill;
  readonly work: Work;
}

/**
 * Stock that weighs less than the best so far and still holds all pieces: choices by rising weight, of which the first
 * that can be filled is the best there is.
 *
 * @param best    Undefined where none is known.
 * @param atMost  The value that the stock may have.
 * @returns The best known in the end, and what none can weigh less than.
 */
export function lighterStock(
  { pieces, stock, needs, fill, work }: Question,
  best: readonly Filled[] | undefined,
  weights: readonly number[],
  atMost = Infinity,
): { readonly filled: readonly Filled[] | undefined; readonly bound: number } {
  const values = stock.map(({ value }) => value);
  const most = best ? sumOver(best, weights) : Infinity;
  const options = choices(stock, needs, weights);
  let bound = most;
  for (let next = options.next(); ; next = options.next()) {
    const weight = next.done ? next.value : next.value.weight;
    if (next.done || weight >= most) return { filled: best, bound: Math.min(bound, weight) };
    const mayBe = weigh(next.value.counts, values) <= atMost && work.left > 0;
    const found = mayBe ? fill(pieces, sheetsOf(next.value.counts, stock), work) : 'unknown';
    if (found === 'none') continue;
    bound = Math.min(bound, weight);
    if (found !== 'unknown') return { filled: found, bound };
    if (work.left <= 0) return { filled: best, bound };
  }
}
