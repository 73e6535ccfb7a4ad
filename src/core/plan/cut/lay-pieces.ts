import type { InPieces } from '../../in-pieces.ts';
import { onceEach } from '../../once-each.ts';
import { type Exact, ceil, commonMeasure, exact, floor, one } from '../../quantity/exact.ts';
import { cuttingLengths } from '../../solve/cutting/lengths.ts';
import { cuttingSheets } from '../../solve/cutting/sheets.ts';
import type { ToCut } from './cut-pieces.ts';

/** Sheets, rolls or rods of one size. */
export interface CutStock {
  /** Width and length, or the one length; in mm. */
  readonly sides: readonly Exact[];
  /** Of one; zero for what is there already. */
  readonly price: Exact;
  /** As many as are needed where left out. */
  readonly count?: number;
}

/** One sheet, roll or rod, and where the pieces lie on it, in mm. */
export interface Laid {
  /** Index into the stock. */
  readonly of: number;
  readonly places: readonly {
    /** Index into the kinds. */
    readonly kind: number;
    readonly x: Exact;
    readonly y: Exact;
    readonly turned: boolean;
  }[];
}

/**
 * All pieces of a material laid on sheets, rolls or rods that cost little. What is cut alike many times is one and the
 * same in the list.
 *
 * @param stock   Each piece fits one of them, of which there are as many as one likes.
 * @param budget  Pieces that may be laid in search of better layouts. Work, never seconds.
 */
export function* layingPieces(
  toCut: ToCut,
  stock: readonly CutStock[],
  budget: number,
): InPieces<{ readonly laid: readonly Laid[]; readonly bound: Exact; readonly fewest: number }> {
  const whole = inGrains(toCut, stock);
  const mm = onceEach((grains: number): Exact => exact(grains).mul(whole.grain));
  const inMm = onceEach(({ of, places }: OnOne): Laid => ({
    of,
    places: places.map(({ piece, x, y, turned }) => ({ kind: piece, x: mm(x), y: mm(y), turned })),
  }));
  const { laid, bound, fewest } = yield* layMany(whole, toCut.by, budget);
  return {
    laid: laid.map(inMm),
    bound: exact(Math.ceil(bound)).mul(whole.coin),
    fewest,
  };
}

/** Finer than that, in mm, nothing is told apart: pieces are laid as if a little larger. */
const finest = exact('1/10000');

/** The same in whole numbers of the largest part of a millimetre that loses nothing, and prices in whole numbers of one coin. */
function inGrains({ gap, kinds }: ToCut, stock: readonly CutStock[]) {
  const sizes = [gap, ...kinds.flatMap(({ sides }) => sides), ...stock.flatMap(({ sides }) => sides)];
  const part = one.div(commonMeasure(sizes).d);
  const grain = part.compare(finest) < 0 ? finest : part;
  const coin = commonMeasure(stock.map(({ price }) => price));
  const up = (sides: readonly Exact[]): number[] => sides.map((side) => ceil(side.div(grain)));
  const down = (sides: readonly Exact[]): number[] => sides.map((side) => floor(side.div(grain)));
  return {
    grain,
    coin,
    gap: ceil(gap.div(grain)),
    pieces: kinds.map((kind) => ({ sides: up(kind.sides), turn: kind.turn, count: kind.for.length })),
    stock: stock.map(({ sides, price, count }) => ({
      sides: down(sides),
      price: Number(price.div(coin).n),
      ...(count === undefined ? {} : { count }),
    })),
  };
}
type InGrains = ReturnType<typeof inGrains>;

interface OnOne {
  readonly of: number;
  readonly places: readonly { piece: number; x: number; y: number; turned: boolean }[];
}
interface OnAll {
  readonly laid: readonly OnOne[];
  readonly bound: number;
  readonly fewest: number;
}

/** More pieces than this are not laid at once, fewer with a small budget: the search would take too long. */
const atOnceUpTo = 240;
const atOnceAtLeast = 60;
/** A part that fills fewer sheets says too little of how the rest is best laid. */
const enoughSheets = 8;

/**
 * Many pieces: an even part of them is laid, its full sheets are cut again and again, and the rest is laid after.
 *
 *     1000 of each   ->   25 times 40 of each, without their last sheet; then what is left over
 */
function* layMany(whole: InGrains, by: ToCut['by'], budget: number): InPieces<OnAll> {
  const total = whole.pieces.reduce((sum, { count }) => sum + count, 0);
  const lay = by === 'lengths' ? onRods : onSheets;
  const atOnce = Math.min(atOnceUpTo, Math.max(atOnceAtLeast, budget / 40));
  if (total <= atOnce) return yield* lay(whole, budget);
  for (let most = atOnce; most < total; most *= 4) {
    const times = Math.ceil(total / most);
    const { laid: part } = yield* lay(shareOf(whole, times), budget);
    if (part.length < enoughSheets) continue;
    const full = part.slice(0, -1);
    const { laid: rest } = yield* layMany(without(whole, full, times), by, budget);
    const laid = [...Array.from({ length: times }, () => full).flat(), ...rest];
    return { laid, ...atLeast(whole) };
  }
  return yield* lay(whole, budget);
}

/** An even part of the pieces, and of what there is only so much of. */
function shareOf(whole: InGrains, times: number): InGrains {
  const part = (count: number): number => Math.floor(count / times);
  return {
    ...whole,
    pieces: whole.pieces.map((piece) => ({ ...piece, count: part(piece.count) })),
    stock: whole.stock.map((one) => (one.count === undefined ? one : { ...one, count: part(one.count) })),
  };
}

/** What is left to lay, and to lay it on, after some sheets have been cut so often. */
function without(whole: InGrains, laid: readonly OnOne[], times: number): InGrains {
  const pieces = whole.pieces.map((piece) => ({ ...piece }));
  const stock = whole.stock.map((one) => ({ ...one }));
  for (const { of, places } of laid) {
    const one = stock[of]!;
    if (one.count !== undefined) one.count -= times;
    for (const { piece } of places) pieces[piece]!.count -= times;
  }
  return { ...whole, pieces, stock };
}

/** By area, or length, alone: the gaps belong to the pieces and to the stock. */
function atLeast({ pieces, stock, gap }: InGrains): Pick<OnAll, 'bound' | 'fewest'> {
  const size = ({ sides }: { readonly sides: readonly number[] }): number =>
    sides.reduce((all, side) => all * (side + gap), 1);
  const onHand = stock.reduce((sum, one) => sum + (one.count ?? 0) * size(one), 0);
  const all = pieces.reduce((sum, piece) => sum + piece.count * size(piece), 0);
  const rates = stock.flatMap((one) => (one.count === undefined ? [one.price / size(one)] : []));
  return {
    bound: Math.max(0, Math.floor((all - onHand) * Math.min(...rates))),
    fewest: Math.ceil(all / Math.max(...stock.map(size))),
  };
}

function* onRods({ stock, pieces, gap }: InGrains, budget: number): InPieces<OnAll> {
  const { rods, bound, fewest } = yield* cuttingLengths({
    stock: stock.map(({ sides, ...rod }) => ({ ...rod, length: sides[0]! })),
    pieces: pieces.map(({ sides, count }) => ({ length: sides[0]!, count })),
    gap,
    budget,
  });
  const laid = rods.map((rod) => ({
    of: rod.stock,
    places: rod.pieces.map(({ piece, at }) => ({ piece, x: 0, y: at, turned: false })),
  }));
  return { laid, bound, fewest };
}

function* onSheets({ stock, pieces, gap }: InGrains, budget: number): InPieces<OnAll> {
  const { sheets, bound, fewest } = yield* cuttingSheets({
    sheets: stock.map(({ sides, ...sheet }) => ({ ...sheet, width: sides[0]!, height: sides[1]! })),
    pieces: pieces.map(({ sides, ...piece }) => ({ ...piece, width: sides[0]!, height: sides[1]! })),
    gap,
    budget,
  });
  return { laid: sheets.map(({ sheet, placements }) => ({ of: sheet, places: placements })), bound, fewest };
}
