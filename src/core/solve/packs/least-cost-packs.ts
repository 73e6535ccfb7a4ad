import { exact, zero, type Exact } from '../../quantity/exact.ts';
import { leastFirst } from '../least-first.ts';
import { ceilDivide, wholeNumbers, type Pack, type WholeNumbers } from './whole-packs.ts';

export type { Pack } from './whole-packs.ts';

/** What to buy: how many of each pack, in the order of the packs given. */
export interface PacksToBuy {
  readonly counts: number[];
  readonly cost: Exact;
  readonly left: Exact;
}

/**
 * Whole packs to buy so that at least `needed` is in hand, at the least price.
 *
 *     needed 120 g   |=====|=====|==···|    pack 50 g  ->  3 packs, 30 g left over
 *
 * How it stays exact and quick for a large need: most of any large need is met by the pack with the best price per
 * unit. Every other pack costs something extra above that rate, so a choice of *other* packs is worth finishing (with
 * best packs) only while their extra is no more than what the best answer so far wastes. Choices are tried by rising
 * extra; the first whose extra passes that waste proves the answer. Of two choices that differ by a whole number of
 * best packs, the smaller one with no more extra does for both. So no more choices are kept than there are sizes
 * below the need, and in practice a few hundred.
 *
 * @param needed  After waste, less stock on hand. Zero or more; same dimension as the packs.
 * @param packs   At least one; each holds more than zero and costs zero or more.
 * @returns Count of each pack, exact cost, exact left-over. Ties: least left over, then fewest packs, then most of the
 *          pack listed first.
 * @throws {Bug} When a number is out of its range: the checks should have stopped the plan before.
 * @source Gilmore and Gomory, The theory and computation of knapsack functions, Operations Research 14 (1966), for
 *         the period of the best pack; the order of search is Dijkstra's (1959). Both from memory.
 */
export function leastCostPacks(needed: Exact, packs: readonly Pack[]): PacksToBuy {
  const numbers = wholeNumbers(needed, packs);
  const counts = packs.length === 0 ? [] : leastCover(numbers).counts;
  const sum = (of: (pack: Pack) => Exact): Exact =>
    packs.reduce((all, pack, index) => all.add(of(pack).mul(exact(counts[index]!))), zero);
  return { counts, cost: sum(({ price }) => price), left: sum(({ holds }) => holds).sub(needed) };
}

/** Packs other than the best one. What is above the best rate is counted in `1 / size of the best pack`. */
interface Choice {
  readonly size: bigint;
  readonly extraPrice: bigint;
  readonly extraPacks: bigint;
  /** Of the best pack: minus as many as fill the same size, so that choices of different sizes compare. */
  readonly counts: readonly number[];
}

interface Cover {
  readonly price: bigint;
  readonly size: bigint;
  readonly packs: number;
  readonly counts: number[];
}

function leastCover(numbers: WholeNumbers): Cover {
  const { sizes, need } = numbers;
  const best = bestPack(numbers);
  const smallest = new Map<bigint, bigint>();
  const waiting = leastFirst<Choice>(byExtra);
  waiting.add({ size: 0n, extraPrice: 0n, extraPacks: 0n, counts: sizes.map(() => 0) });
  let least: Cover | undefined;
  for (let choice = waiting.next(); choice; choice = waiting.next()) {
    if (least && isBeaten(choice, least, numbers, best)) break;
    const rest = choice.size % sizes[best]!;
    if (choice.size >= (smallest.get(rest) ?? choice.size + 1n)) continue;
    smallest.set(rest, choice.size);
    const cover = finish(choice, numbers, best);
    if (!least || compareCovers(cover, least) < 0) least = cover;
    if (choice.size < need)
      sizes.forEach((_, pack) => pack !== best && waiting.add(withOne(choice, pack, numbers, best)));
  }
  return least!;
}

/** The pack with the least price per unit; among equals the largest, then the first. */
function bestPack({ sizes, prices }: WholeNumbers): number {
  const isBetter = (a: number, b: number): boolean => {
    const difference = prices[a]! * sizes[b]! - prices[b]! * sizes[a]!;
    return difference < 0n || (difference === 0n && sizes[a]! > sizes[b]!);
  };
  return sizes.reduce((best, _, pack) => (isBetter(pack, best) ? pack : best), 0);
}

function withOne(choice: Choice, pack: number, { sizes, prices }: WholeNumbers, best: number): Choice {
  const size = choice.size + sizes[pack]!;
  const counts = [...choice.counts];
  counts[pack]! += 1;
  counts[best] = -Number(size / sizes[best]!);
  return {
    size,
    extraPrice: choice.extraPrice + prices[pack]! * sizes[best]! - prices[best]! * sizes[pack]!,
    extraPacks: choice.extraPacks + sizes[best]! - sizes[pack]!,
    counts,
  };
}

/** The choice and as many best packs as the rest of the need takes. */
function finish(choice: Choice, { sizes, prices, need }: WholeNumbers, best: number): Cover {
  const missing = choice.size < need ? ceilDivide(need - choice.size, sizes[best]!) : 0n;
  const counts = choice.counts.map((count, pack) => (pack === best ? Number(missing) : count));
  return {
    price: counts.reduce((sum, count, pack) => sum + BigInt(count) * prices[pack]!, 0n),
    size: choice.size + missing * sizes[best]!,
    packs: counts.reduce((sum, count) => sum + count, 0),
    counts,
  };
}

/** Whether no cover that contains this choice can be as good: even one without any waste would cost more. */
function isBeaten(
  choice: Choice,
  least: Cover,
  { sizes, prices, need }: WholeNumbers,
  best: number,
): boolean {
  const size = sizes[best]!;
  const atBest = [choice.extraPrice + need * prices[best]!, need, choice.extraPacks + need];
  return firstDifference(atBest, [least.price * size, least.size, BigInt(least.packs) * size]) > 0;
}

function byExtra(a: Choice, b: Choice): number {
  return (
    firstDifference([a.extraPrice, a.extraPacks], [b.extraPrice, b.extraPacks]) ||
    firstDifference(b.counts, a.counts)
  );
}

function compareCovers(a: Cover, b: Cover): number {
  return (
    firstDifference([a.price, a.size, BigInt(a.packs)], [b.price, b.size, BigInt(b.packs)]) ||
    firstDifference(b.counts, a.counts)
  );
}

function firstDifference<T extends bigint | number>(a: readonly T[], b: readonly T[]): number {
  const at = a.findIndex((value, index) => value !== b[index]);
  return at < 0 ? 0 : a[at]! < b[at]! ? -1 : 1;
}
