import { leastFirst } from '../least-first.ts';
import { meetsNeeds, type Need } from './needs.ts';
import { weigh, type Stock } from './stock.ts';

/** How many to take of each kind of sheet, and what they weigh together. */
export interface Choice {
  readonly counts: readonly number[];
  readonly weight: number;
}

interface Node extends Choice {
  /** Only kinds from here on are added, so that every choice comes once. */
  readonly from: number;
  /** No choice made from this one weighs less. */
  readonly least: number;
}

/**
 * Choices of sheets that meet every need, by rising weight.
 *
 * @param weights  Of each kind, whole. A kind of no weight is in every choice, as often as there are any.
 * @returns After the last, what all that it did not come to weigh at least; Infinity where it came to all.
 * @source Best first with a bound on the rest: Hart, Nilsson and Raphael (1968), IEEE Trans Syst Sci Cybern 4:100–107.
 *         From memory.
 */
export function* choices(
  stock: readonly Stock[],
  needs: readonly Need[],
  weights: readonly number[],
): Generator<Choice, number> {
  const waiting = leastFirst<Node>((a, b) => a.least - b.least || b.from - a.from);
  const add = (counts: readonly number[], from: number): void => {
    const weight = weigh(counts, weights);
    waiting.add({ counts, from, weight, least: weight + restAtLeast(counts, from) });
  };
  const restAtLeast = leastRest(stock, needs, weights);
  add(
    stock.map(({ count }, kind) => (weights[kind] === 0 ? count : 0)),
    0,
  );
  let patience = 5000;
  for (let next = waiting.next(); next && next.least < Infinity; next = waiting.next()) {
    if (patience-- === 0) return Math.ceil(next.least);
    if (meetsNeeds(next.counts, needs, stock)) yield next;
    for (let kind = next.from; kind < stock.length; kind++)
      if (next.counts[kind]! < stock[kind]!.count)
        add(
          next.counts.map((count, other) => (other === kind ? count + 1 : count)),
          kind,
        );
  }
  return Infinity;
}

/** What the missing area weighs at least, in parts of sheets of the best rates. */
function leastRest(
  stock: readonly Stock[],
  needs: readonly Need[],
  weights: readonly number[],
): (counts: readonly number[], from: number) => number {
  const areas = stock.map(({ width, height }) => width * height);
  const rate = (kind: number): number => weights[kind]! / areas[kind]!;
  const byRate = stock.map((_, kind) => kind).sort((a, b) => rate(a) - rate(b) || a - b);
  const total = Math.max(...needs.map(({ area }) => area));
  return (counts, from) => {
    let missing = counts.reduce((rest, count, kind) => rest - count * areas[kind]!, total);
    let weight = 0;
    for (const kind of byRate) {
      if (missing <= 0 || kind < from) continue;
      const sheets = Math.min(stock[kind]!.count - counts[kind]!, missing / areas[kind]!);
      weight += sheets * weights[kind]!;
      missing -= sheets * areas[kind]!;
    }
    return missing > total * 1e-12 ? Infinity : weight * (1 - 1e-12);
  };
}
