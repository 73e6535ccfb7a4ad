import { Bug } from '../../diagnostic.ts';
import type { GuideAt } from '../../model/guide.ts';
import { type Exact, ceil, exact, one, zero } from '../../quantity/exact.ts';
import { type Measure, add, areaOf, measure, ratio, times } from '../../quantity/quantity.ts';
import type { MixNeed, RowNeed } from '../result.ts';
import { modelsServed } from './runs.ts';
import type { MixAt, RowAt } from './step-uses.ts';

/** What all rows and mixes of one guide and level come to. */
export interface Needs {
  readonly rows: readonly RowNeed[];
  readonly mixes: readonly MixNeed[];
}

/**
 * What so many models take, waste included.
 *
 * @param models  All of the line, or those of one run.
 * @param made    All models of the line, which an amount for the batch serves at once.
 */
export function needsOf(at: GuideAt, models: number, made: number): Needs {
  const rows = at.materials.map((row, index) => ({ row: index, ...rowNeed(at, row, models, made) }));
  return { rows, mixes: mixNeeds(at, rows) };
}

function rowNeed(at: GuideAt, row: RowAt, models: number, made: number): Omit<RowNeed, 'row'> {
  const portions = portionsFor(at, row, models, made);
  return row.pieces.length > 0 ? pieceNeed(row, portions, models) : amountNeed(row, portions, models);
}

/**
 * How often the row's amount is taken for so many models: a started portion counts in full.
 *
 *     each model: 10 models -> 10      every 4 models: 10 models -> 3      the batch -> 1      does 30 models -> 1
 */
export function portionsFor(at: GuideAt, row: RowAt, models: number, made: number): number {
  return Math.ceil(models / (row.does ?? modelsServed(at, row.for, made)));
}

/** The share of those portions that is used: all, but of what does for many models only so many of them. */
function shareUsed(row: RowAt, portions: number, models: number): Exact {
  return row.does === undefined || portions === 0
    ? one
    : exact(models).div(exact(row.does)).div(exact(portions));
}

function amountNeed(row: RowAt, portions: number, models: number): Omit<RowNeed, 'row'> {
  const { most, usual, unit } = amountOf(row);
  const used = exact(portions)
    .mul(shareUsed(row, portions, models))
    .mul(one.add(exact(row.waste)));
  const taken = row.does === undefined ? used : exact(ceil(used));
  const each = { value: exact(most), unit };
  return {
    total: times(each, taken),
    usual: times({ value: exact(usual), unit }, used),
    one: each,
    unused: times(each, taken.sub(used)),
    pieces: [],
  };
}

/** @throws {Bug} When a row has neither an amount nor pieces: reading lets none through. */
export function amountOf(row: RowAt): NonNullable<RowAt['amount']> {
  if (!row.amount) throw new Bug('a row of materials has neither amount nor pieces', { row: row.id });
  return row.amount;
}

function pieceNeed(row: RowAt, portions: number, models: number): Omit<RowNeed, 'row'> {
  const pieces = row.pieces.map(({ id, count }) => ({ piece: id, count: withExtras(count * portions, row) }));
  const total = stockFor(row, pieces);
  const once = row.pieces.map(({ id, count }) => ({ piece: id, count }));
  const usual = times(total, shareUsed(row, portions, models));
  return { total, usual, one: stockFor(row, once), unused: times(total, zero), pieces };
}

/** Pieces to cut so that whole extra ones cover the waste: 21 at 5 % -> 21 + 2. */
export function withExtras(pieces: number, row: RowAt): number {
  return pieces + ceil(exact(row.waste).mul(exact(pieces)));
}

/** The area (or length, of rods) of so many of each piece, without the gaps between them. */
export function stockFor(
  row: RowAt,
  counts: readonly { readonly piece: string; readonly count: number }[],
): Measure {
  const sizeOf = (id: string): Measure => stockOf(row.pieces.find((piece) => piece.id === id)!);
  const [first, ...rest] = counts.map(({ piece, count }) => times(sizeOf(piece), exact(count)));
  if (!first) return times(stockOf(row.pieces[0]!), zero);
  return rest.reduce(add, first);
}

function stockOf({ size }: RowAt['pieces'][number]): Measure {
  return size.sides.length === 1 ? measure(size.sides[0]!) : areaOf(size);
}

/**
 * What each mix comes to. What stays in the pot divides: of 5 % left behind, 1.14 L are had from 1.2 L.
 *
 *     wanted 15.12 L   ->   mixed 15.12 / 0.95 L   ->   each ingredient as often as `makes` goes into that
 */
function mixNeeds(at: GuideAt, rows: readonly RowNeed[]): readonly MixNeed[] {
  return at.mixes.map((mix) => {
    const drawing = rows.filter(({ row }) => at.materials[row]!.use === mix.id);
    const sum = (end: 'total' | 'usual' | 'one'): Measure =>
      drawing.map((need) => need[end]).reduce(add, { value: zero, unit: mix.makes.unit });
    return mixNeed(mix, {
      total: mixed(mix, sum('total')),
      usual: mixed(mix, sum('usual')),
      one: sum('one'),
    });
  });
}

/** What must go into the pot so that `wanted` comes out. */
function mixed(mix: MixAt, wanted: Measure): Measure {
  return times(wanted, one.div(one.sub(exact(mix.leftBehind))));
}

function mixNeed(mix: MixAt, need: Readonly<Record<'total' | 'usual' | 'one', Measure>>): MixNeed {
  const often = (amount: Measure): Exact => ratio(amount, measure(mix.makes));
  const ingredients = mix.of.map(({ use, amount: { most, usual, unit } }) => ({
    use,
    total: times({ value: exact(most), unit }, often(need.total)),
    usual: times({ value: exact(usual), unit }, often(need.usual)),
    one: times({ value: exact(most), unit }, often(need.one)),
  }));
  return { mix: mix.id, total: need.total, one: need.one, ingredients };
}
