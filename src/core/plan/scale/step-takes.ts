import type { GuideAt } from '../../model/guide.ts';
import { type Measure, times } from '../../quantity/quantity.ts';
import type { StepTake } from '../result.ts';
import { type Needs, needsOf, portionsFor, stockFor } from './scale.ts';
import type { Draw } from './shares.ts';

/** Something that is needed in several sizes: for the line, for one full run, for one model. */
interface Sizes<T> {
  readonly total: T;
  readonly run: T;
  readonly one: T;
}

/** How many models each size is for. */
interface Models {
  readonly run: number;
  readonly left: number;
  readonly made: number;
}

/**
 * What one step takes, in the order in which it names it. Over all steps the totals add up to the rows.
 *
 * @param draws   Of this step alone.
 * @param models  `run`: in a full run of it; in a small batch, all there are. `left`: in all its runs to come.
 */
export function stepTakes(at: GuideAt, draws: readonly Draw[], models: Models): readonly StepTake[] {
  const line = needsOf(at, models.left, models.made);
  const run = models.run === models.left ? line : needsOf(at, models.run, models.made);
  return draws.map((draw) => {
    if (draw.of === 'row') return rowTake(at, draw, line, run);
    if (draw.of === 'ingredient') return ingredientTake(draw, line, run);
    return pieceTake(at, draw, line, models);
  });
}

function rowTake(
  at: GuideAt,
  { row, share }: Extract<Draw, { of: 'row' }>,
  line: Needs,
  run: Needs,
): StepTake {
  const { id, use } = at.materials[row]!;
  const isMix = at.mixes.some((mix) => mix.id === use);
  const { total, one } = line.rows[row]!;
  return {
    use: id,
    ...(isMix ? {} : { material: use }),
    ...shared({ total, run: run.rows[row]!.total, one }, (amount) => times(amount, share)),
    pieces: [],
  };
}

function ingredientTake(draw: Extract<Draw, { of: 'ingredient' }>, line: Needs, run: Needs): StepTake {
  const ingredientOf = ({ mixes }: Needs) =>
    mixes.find(({ mix }) => mix === draw.mix)!.ingredients[draw.index]!;
  const { use, total, one } = ingredientOf(line);
  const sizes = { total, run: ingredientOf(run).total, one };
  return { use, material: use, ...shared(sizes, (amount) => times(amount, draw.share)), pieces: [] };
}

/** Extra pieces are spread over the runs; what does not divide stays over in the last. */
function pieceTake(
  at: GuideAt,
  draw: Extract<Draw, { of: 'pieces' }>,
  line: Needs,
  { run, left, made }: Models,
): StepTake {
  const row = at.materials[draw.row]!;
  const [runs, all] = [portionsFor(at, row, run, made), portionsFor(at, row, left, made)];
  const pieces = draw.pieces.map((piece) => {
    const total = line.rows[draw.row]!.pieces.find((need) => need.piece === piece)!.count;
    const one = row.pieces.find(({ id }) => id === piece)!.count;
    return { piece, total, run: all === 0 ? 0 : Math.floor((total * runs) / all), one };
  });
  const stock = (size: keyof Sizes<number>): Measure =>
    stockFor(
      row,
      pieces.map((piece) => ({ piece: piece.piece, count: piece[size] })),
    );
  const sizes = { total: stock('total'), run: stock('run'), one: stock('one') };
  return { use: row.id, material: row.use, ...sizes, pieces };
}

function shared(sizes: Sizes<Measure>, share: (amount: Measure) => Measure): Sizes<Measure> {
  return { total: share(sizes.total), run: share(sizes.run), one: share(sizes.one) };
}
