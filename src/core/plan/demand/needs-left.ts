import type { GuideAt } from '../../model/guide.ts';
import type { Exact } from '../../quantity/exact.ts';
import { type Measure, add, times } from '../../quantity/quantity.ts';
import type { MixNeed, RowNeed } from '../result.ts';
import { type Needs, needsOf, stockFor } from '../scale/scale.ts';
import type { Draw } from '../scale/shares.ts';

/** What decides the needs of a line. */
export interface ToSupply {
  readonly at: GuideAt;
  /** Models made, numbered from 1: none where all are finished, more than enough where runs are always full. */
  readonly made: number;
  /** For each step: so many of the first models stand in runs that need not be done. */
  readonly past: readonly number[];
  readonly draws: readonly Draw[];
}

/** The needs as each step still has them, by its index. */
type ByStep = readonly Needs[];

/**
 * What the first so many models of a line still take, waste included: without what their past runs have used.
 *
 *     12 models, 4 of them past pouring   ->   gel for 8; tape, which comes later, for 12
 */
export function needsLeft(line: ToSupply, models: number): Needs {
  const { at, made, past } = line;
  const all = needsOf(at, models, made);
  if (past.every((count) => count === 0)) return all;
  const left = past.map((count) => (count === 0 ? all : needsOf(at, Math.max(0, models - count), made)));
  return {
    rows: all.rows.map((need) => rowLeft(line, need, left)),
    mixes: all.mixes.map((_, mix) => mixLeft(line, mix, left)),
  };
}

function rowLeft({ at, draws, past }: ToSupply, need: RowNeed, left: ByStep): RowNeed {
  const { row } = need;
  const { does, pieces } = at.materials[row]!;
  const own = draws.filter((draw) => draw.of !== 'ingredient' && draw.row === row);
  if (own.length === 0) return need;
  if (does !== undefined) return left[lastUser(own, past)]!.rows[row]!;
  if (pieces.length > 0) return piecesLeft(at.materials[row]!, need, own, left);
  const of = (end: 'total' | 'usual') => drawn(own, (step) => left[step]!.rows[row]![end]);
  return { ...need, total: of('total'), usual: of('usual') };
}

function piecesLeft(
  row: ToSupply['at']['materials'][number],
  need: RowNeed,
  own: readonly Draw[],
  left: ByStep,
): RowNeed {
  const pieces = need.pieces.map(({ piece, count }, index) => {
    const draw = own.find((other) => other.of === 'pieces' && other.pieces.includes(piece));
    return { piece, count: draw ? left[draw.step]!.rows[need.row]!.pieces[index]!.count : count };
  });
  const total = stockFor(row, pieces);
  return { ...need, total, usual: total, pieces };
}

/** What went into the pot for runs that are past is not mixed again. */
function mixLeft({ at, draws, past }: ToSupply, mix: number, left: ByStep): MixNeed {
  const own = draws.filter((draw) => draw.of === 'ingredient' && draw.mix === at.mixes[mix]!.id);
  const need = left[lastUser(own, past)]!.mixes[mix]!;
  const ingredients = need.ingredients.map((ingredient, index) => {
    const into = own.filter((draw) => draw.of === 'ingredient' && draw.index === index);
    const of = (end: 'total' | 'usual') =>
      drawn(into, (step) => left[step]!.mixes[mix]!.ingredients[index]![end]);
    return into.length === 0 ? ingredient : { ...ingredient, total: of('total'), usual: of('usual') };
  });
  return { ...need, ingredients };
}

/** Of each step its share of what it still needs. */
function drawn(draws: readonly Draw[], needOf: (step: number) => Measure): Measure {
  return draws.map((draw) => times(needOf(draw.step), shareOf(draw)!)).reduce(add);
}

function shareOf(draw: Draw): Exact | undefined {
  return draw.of === 'pieces' ? undefined : draw.share;
}

/** The step that the fewest models are past. */
function lastUser(draws: readonly Draw[], past: readonly number[]): number {
  return draws
    .map(({ step }) => step)
    .reduce((last, step) => (past[step]! < past[last]! ? step : last), draws[0]?.step ?? 0);
}
