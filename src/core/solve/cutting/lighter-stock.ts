import type { InPieces } from '../../in-pieces.ts';
import { choices, type Choice } from './choices.ts';
import type { Need } from './needs.ts';
import type { PieceKind } from './pieces.ts';
import {
  sheetsOf,
  sumOver,
  weigh,
  type Fill,
  type Filled,
  type FilledOrNot,
  type Stock,
  type Work,
} from './stock.ts';

/** What is to be cut from what, what that takes at least, and how much may be done about it. */
export interface Question {
  readonly pieces: readonly PieceKind[];
  readonly stock: readonly Stock[];
  readonly needs: readonly Need[];
  readonly fill: Fill;
  readonly work: Work;
}

/**
 * Stock that weighs less than the best so far and still holds all pieces. The first choice by rising weight that is not
 * proven impossible is tried for long; where it cannot be filled, the others by halves.
 *
 * @param best    Undefined where none is known.
 * @param atMost  The value that the stock may have.
 * @returns The best known in the end, and what none can weigh less than.
 */
export function* lighterStock(
  { pieces, stock, needs, fill, work }: Question,
  best: readonly Filled[] | undefined,
  weights: readonly number[],
  atMost = Infinity,
): InPieces<{ readonly filled: readonly Filled[] | undefined; readonly bound: number }> {
  const values = stock.map(({ value }) => value);
  const most = best ? sumOver(best, weights) : Infinity;
  const { lighter, rest } = lighterThan(most, choices(stock, needs, weights));
  const allowed = lighter.filter(({ counts }) => weigh(counts, values) <= atMost);
  function* tryOut({ counts }: Choice): ReturnType<Fill> {
    return work.left > 0 ? yield* fill(pieces, sheetsOf(counts, stock), work) : 'unknown';
  }
  let found: FilledOrNot = 'none';
  let at = -1;
  while (found === 'none' && ++at < allowed.length) found = yield* tryOut(allowed[at]!);
  const proven = new Set(allowed.slice(0, at));
  const bound = lighter.find((choice) => !proven.has(choice))?.weight ?? rest;
  let filled = typeof found === 'object' ? found : best;
  let [tooLittle, enough] = [at, typeof found === 'object' ? at : allowed.length];
  while (enough - tooLittle > 1 && work.left > 0) {
    const middle = (tooLittle + enough) >> 1;
    const better = yield* tryOut(allowed[middle]!);
    if (typeof better === 'object') [filled, enough] = [better, middle];
    else tooLittle = middle;
  }
  return { filled, bound };
}

/** All choices that weigh less, by rising weight, and what any other weighs at least. */
function lighterThan(most: number, options: Generator<Choice, number>) {
  const lighter: Choice[] = [];
  for (let next = options.next(); ; next = options.next()) {
    if (next.done) return { lighter, rest: Math.min(most, next.value) };
    if (next.value.weight >= most) return { lighter, rest: most };
    lighter.push(next.value);
  }
}
