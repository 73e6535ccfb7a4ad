import { type InPieces, oneByOne } from '../../in-pieces.ts';
import { onceEach } from '../../once-each.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import { leastCostPacks } from '../../solve/packs/least-cost-packs.ts';
import type { PieceFor, PieceKind, ToCut } from './cut-pieces.ts';
import { type Laid, layingPieces } from './lay-pieces.ts';
import type { Choice, Offer } from '../supply/offers.ts';
import { type OfOneSize, extent } from '../supply/on-hand.ts';
import type { CutLayout, CutPiece } from '../result.ts';

/** A pack of sheets, rolls or rods: so many of one size. */
export interface PackToCut extends OfOneSize {
  readonly offer: Offer;
}

/** What a material is cut from. */
export interface ToCutFrom {
  readonly toCut: ToCut;
  readonly onHand: readonly OfOneSize[];
  /** At least one; either all have prices or none has. */
  readonly packs: readonly PackToCut[];
  /** Pieces that may be laid in search of better layouts. */
  readonly budget: number;
}

/** The pieces on sheets, rolls or rods, and the packs that bring them. */
export interface Cut {
  readonly choice: readonly Choice[];
  /** What is on hand first. */
  readonly layouts: readonly CutLayout[];
  /** Packs, each worth its price, else its area or length. */
  readonly worth: Exact;
  /** No plan is worth less. */
  readonly bound: Exact;
  /** No plan takes fewer sheets. */
  readonly fewest: number;
}

/**
 * The pieces cut from what is on hand first, then from whole packs of least outlay (without prices: of least area);
 * then from the fewest sheets, then with the largest offcut.
 *
 * Packs of several sheets make the price of one uncertain: so each size of sheet is tried alone, and all sizes
 * together at the price in the best pack, and in the smallest; what the whole packs come to decides.
 *
 * @returns `undefined` where some piece fits no sheet of these packs.
 */
export function* cutting(from: ToCutFrom): InPieces<Cut | undefined> {
  if (!from.toCut.kinds.every((kind) => fitsOneOf(kind, from.packs))) return undefined;
  const tries: Cut[] = [];
  for (const sizes of triesOf(from)) tries.push(yield* cutFromSizes(from, sizes));
  const best = tries.reduce((a, b) => (isBetter(b, a) ? b : a));
  const { bound, fewest } = tries[0]!;
  const packs = wholePacks(from, fewest);
  return { ...best, bound: packs.compare(bound) > 0 ? packs : bound, fewest };
}

/** What the cheapest packs come to that hold so many sheets, whatever their size. */
function wholePacks({ onHand, packs }: ToCutFrom, sheets: number): Exact {
  const own = onHand.reduce((sum, { count }) => sum + count, 0);
  const toBuy = exact(Math.max(0, sheets - own));
  return leastCostPacks(toBuy, packs.map(asSheets)).cost;
}

/** A pack by how many sheets it holds. */
function asSheets(pack: PackToCut) {
  return { holds: exact(pack.count), price: worthOf(pack) };
}

/** Sheets of one size, what one of them counts for, and the packs that hold it. */
interface SizeForSale {
  readonly sides: readonly Exact[];
  readonly price: Exact;
  readonly packs: readonly PackToCut[];
}

/** All sizes at the least price first, whose bound holds for all. */
function triesOf({ toCut, packs }: ToCutFrom): readonly (readonly SizeForSale[])[] {
  const names = [...new Set(packs.map(sizeName))];
  const bySize = names.map((name) => packs.filter((pack) => sizeName(pack) === name));
  const each = (pack: PackToCut): Exact => worthOf(pack).div(pack.count);
  const sizes = (pick: (alike: readonly PackToCut[]) => PackToCut): SizeForSale[] =>
    bySize.map((alike) => ({ sides: alike[0]!.sides, price: each(pick(alike)), packs: alike }));
  const cheapest = sizes((alike) => alike.reduce((a, b) => (each(b).compare(each(a)) < 0 ? b : a)));
  const smallest = sizes((alike) => alike.reduce((a, b) => (worthOf(b).compare(worthOf(a)) < 0 ? b : a)));
  const isAlike = smallest.every(({ price }, i) => price.equals(cheapest[i]!.price));
  const alone = cheapest.filter(({ packs: own }) => toCut.kinds.every((kind) => fitsOneOf(kind, own)));
  return [
    cheapest,
    ...(isAlike || names.length < 2 ? [] : [smallest]),
    ...(names.length < 2 ? [] : alone.map((size) => [size])),
  ];
}

function sizeName({ sides }: PackToCut): string {
  return sides.map((side) => side.toFraction()).join(' x ');
}

/** Its price; where none is known, its area or length. */
function worthOf({ offer, sides, count }: PackToCut): Exact {
  return offer.price ?? extent(sides).mul(count);
}

/** Whether a piece fits a sheet of these, turned where it may be. */
export function fitsOneOf(
  { sides, turn }: Pick<PieceKind, 'sides' | 'turn'>,
  sheets: readonly Pick<OfOneSize, 'sides'>[],
): boolean {
  const isWithin = (piece: readonly Exact[], sheet: readonly Exact[]): boolean =>
    piece.every((side, i) => side.compare(sheet[i]!) <= 0);
  return sheets.some(
    (sheet) => isWithin(sides, sheet.sides) || (turn && isWithin([...sides].reverse(), sheet.sides)),
  );
}

function isBetter(a: Cut, b: Cut): boolean {
  const byWorth = a.worth.compare(b.worth) || a.layouts.length - b.layouts.length;
  return byWorth < 0 || (byWorth === 0 && largestOffcut(a).compare(largestOffcut(b)) > 0);
}

function largestOffcut({ layouts }: Cut): Exact {
  const offcuts = layouts.map(({ width, length, used }) =>
    width.n === 0n ? length.sub(used) : width.mul(length.sub(used)),
  );
  return offcuts.reduce((most, offcut) => (offcut.compare(most) > 0 ? offcut : most), zero);
}

function* cutFromSizes({ toCut, onHand, budget }: ToCutFrom, sizes: readonly SizeForSale[]): InPieces<Cut> {
  const stock = [...onHand.map((own) => ({ ...own, price: zero })), ...sizes];
  const { laid, ...bounds } = yield* layingPieces(toCut, stock, budget);
  const inOrder = [...laid].sort((a, b) => Number(a.of >= onHand.length) - Number(b.of >= onHand.length));
  const choices = sizes.map((size, i) =>
    packsHolding(size, inOrder.filter(({ of }) => of === onHand.length + i).length),
  );
  const packs = choices.map((choice) =>
    choice.flatMap(({ pack, count }) => Array<number>(pack.count * count).fill(pack.offer.pack)),
  );
  const waiting = toCut.kinds.map((kind) => kind.for.values());
  const lyingOf = onceEach((one: Laid) => lying(one, toCut));
  const layouts = yield* oneByOne(inOrder, (one) =>
    layoutOf(lyingOf(one), {
      waiting,
      sides: stock[one.of]!.sides,
      pack: packs[one.of - onHand.length]?.pop(),
    }),
  );
  const choice = choices.flat();
  return {
    choice: choice.map(({ pack, count }) => ({ offer: pack.offer, count })),
    layouts,
    worth: choice.reduce((sum, { pack, count }) => sum.add(worthOf(pack).mul(count)), zero),
    ...bounds,
  };
}

/** The cheapest whole packs that hold so many sheets. */
function packsHolding({ packs }: SizeForSale, sheets: number) {
  const { counts } = leastCostPacks(exact(sheets), packs.map(asSheets));
  return packs.map((pack, i) => ({ pack, count: counts[i]! })).filter(({ count }) => count > 0);
}

interface Onto {
  /** Of each kind those not laid yet: the first models have their pieces first. */
  readonly waiting: readonly Iterator<PieceFor>[];
  readonly sides: readonly Exact[];
  readonly pack: number | undefined;
}

/** What is the same wherever pieces are laid like this. */
interface Lying {
  readonly used: Exact;
  readonly places: readonly (Laid['places'][number] & Pick<CutPiece, 'width' | 'height'>)[];
}

function lying({ places }: Laid, { kinds }: ToCut): Lying {
  const all = places.map((place) => {
    const [height, width = zero] = [...kinds[place.kind]!.sides].reverse();
    return place.turned ? { ...place, width: height!, height: width } : { ...place, width, height: height! };
  });
  const tops = all.map(({ y, height }) => y.add(height));
  return { places: all, used: tops.reduce((most, top) => (top.compare(most) > 0 ? top : most), zero) };
}

function layoutOf({ places, used }: Lying, { waiting, sides, pack }: Onto): CutLayout {
  const [length, width = zero] = [...sides].reverse();
  return {
    ...(pack === undefined ? {} : { pack }),
    width,
    length: length!,
    used,
    pieces: places.map(({ kind, ...place }) => ({
      ...(waiting[kind]!.next().value as PieceFor),
      ...place,
    })),
  };
}
