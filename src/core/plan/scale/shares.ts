import type { GuideAt } from '../../model/guide.ts';
import { type Exact, exact, one, zero } from '../../quantity/exact.ts';
import { type Measure, convert } from '../../quantity/quantity.ts';
import { amountOf } from './scale.ts';
import { type Named, type StepUseAt, indexesOf, meaningOf, usesOf } from './step-uses.ts';

/** What one step draws on: a share of a row, some of its pieces, or a share of an ingredient. */
export type Draw = { readonly step: number } & (
  | { readonly of: 'row'; readonly row: number; readonly share: Exact }
  | { readonly of: 'pieces'; readonly row: number; readonly pieces: readonly string[] }
  | { readonly of: 'ingredient'; readonly mix: string; readonly index: number; readonly share: Exact }
);

/** Mass per volume of a material, g/mL; `undefined` where nobody measured it. */
export type DensityOf = (material: string) => Exact | undefined;

/** One name in the `uses` of one step. */
interface Naming {
  readonly step: number;
  readonly use: StepUseAt;
  readonly meaning: Named;
}

/**
 * Which step draws on what, in the order of the steps and of what they name.
 *
 * A step that says an amount takes that share of the row; the rest goes to a step that names the row without an
 * amount: the first of them, and of a mix the last (it is poured where it is named last). Ingredients that nobody
 * names, and what is left of those, go into the pot at the first step that uses the mix.
 */
export function drawsOf(at: GuideAt, densityOf: DensityOf): readonly Draw[] {
  const namings = at.steps.flatMap((step, index) =>
    usesOf(at, step).map((use) => ({ step: index, use, meaning: meaningOf(at, use.material) })),
  );
  const named = [...rowDraws(at, namings, densityOf), ...ingredientDraws(at, namings, densityOf)];
  return named
    .sort((a, b) => a.naming - b.naming)
    .map(({ draw }) => draw)
    .filter((draw) => draw.of === 'pieces' || draw.share.compare(zero) > 0);
}

interface NamedDraw {
  /** Place of the name among all that steps name, for the order. */
  readonly naming: number;
  readonly draw: Draw;
}

function rowDraws(at: GuideAt, namings: readonly Naming[], densityOf: DensityOf): NamedDraw[] {
  return at.materials.flatMap((row, index) => {
    const naming = indexesOf(namings, ({ meaning }) => meaning.rows.includes(index));
    if (row.pieces.length > 0) return pieceDraws(at, index, namings, naming);
    const whole = wholeOf(at, namings[naming[0] ?? -1]?.meaning.rows ?? [], row.use, densityOf);
    const shares = sharesOf(naming, namings, whole, densityOf(row.use));
    const rest = unsaid(naming, namings);
    const restTo = at.mixes.some(({ id }) => id === row.use) ? rest.at(-1) : rest[0];
    return withRest(shares, restTo).map(({ naming: i, share }) => ({
      naming: i,
      draw: { step: namings[i]!.step, of: 'row' as const, row: index, share },
    }));
  });
}

/** All that a name stands for, of one material: an amount in a step is a share of that. */
function wholeOf(
  at: GuideAt,
  rows: readonly number[],
  use: string,
  densityOf: DensityOf,
): Measure | undefined {
  const amounts = rows
    .map((row) => at.materials[row]!)
    .filter((row) => row.use === use && row.pieces.length === 0)
    .map(amountOf);
  const unit = amounts[0]?.unit;
  if (unit === undefined) return undefined;
  const inUnit = amounts.map(({ most, unit: own }) =>
    convert({ value: exact(most), unit: own }, unit, densityOf(use)),
  );
  return { value: inUnit.reduce((sum, { value }) => sum.add(value), zero), unit };
}

interface Share {
  readonly naming: number;
  readonly share: Exact;
}

/** The share of each name that says an amount. */
function sharesOf(
  naming: readonly number[],
  namings: readonly Naming[],
  whole: Measure | undefined,
  density: Exact | undefined,
): Share[] {
  return naming.flatMap((index) => {
    const { amount } = namings[index]!.use;
    if (!amount || !whole || whole.value.equals(zero)) return [];
    const said = convert({ value: exact(amount.most), unit: amount.unit }, whole.unit, density);
    return [{ naming: index, share: said.value.div(whole.value) }];
  });
}

/** Names that say no amount. */
function unsaid(naming: readonly number[], namings: readonly Naming[]): number[] {
  return naming.filter((index) => !namings[index]!.use.amount);
}

function withRest(shares: readonly Share[], restTo: number | undefined): Share[] {
  const rest = shares.reduce((left, { share }) => left.sub(share), one);
  return restTo === undefined ? [...shares] : [...shares, { naming: restTo, share: rest }];
}

/** Each piece goes to the first step that names it, else to the first that names its row as a whole. */
function pieceDraws(
  at: GuideAt,
  row: number,
  namings: readonly Naming[],
  naming: readonly number[],
): NamedDraw[] {
  const named = (index: number): readonly string[] | undefined => namings[index]!.use.pieces;
  const takerOf = (piece: string): number | undefined =>
    naming.find((index) => named(index)?.includes(piece)) ?? naming.find((index) => !named(index));
  return naming.flatMap((index) => {
    const pieces = at.materials[row]!.pieces.map(({ id }) => id).filter((id) => takerOf(id) === index);
    if (pieces.length === 0) return [];
    return [{ naming: index, draw: { step: namings[index]!.step, of: 'pieces' as const, row, pieces } }];
  });
}

function ingredientDraws(at: GuideAt, namings: readonly Naming[], densityOf: DensityOf): NamedDraw[] {
  return at.mixes.flatMap(({ id: mix, of }) => {
    const pot = potOf(mix, namings);
    return of.flatMap(({ use, amount: { most, unit } }, index) => {
      const isNamed = (other: Named): boolean =>
        other.ingredients.some((i) => i.mix === mix && i.index === index);
      const naming = indexesOf(namings, ({ meaning }) => isNamed(meaning));
      const shares = sharesOf(naming, namings, { value: exact(most), unit }, densityOf(use));
      return withRest(shares, unsaid(naming, namings)[0] ?? pot).map(({ naming: i, share }) => ({
        naming: i,
        draw: { step: namings[i]!.step, of: 'ingredient' as const, mix, index, share },
      }));
    });
  });
}

/** Where a mix is mixed: the first name that stands for it, else for something in it. */
function potOf(mix: string, namings: readonly Naming[]): number | undefined {
  const isMix = ({ meaning }: Naming): boolean => meaning.mixes.includes(mix);
  const isIn = ({ meaning }: Naming): boolean =>
    meaning.ingredients.some((ingredient) => ingredient.mix === mix);
  return indexesOf(namings, isMix)[0] ?? indexesOf(namings, isIn)[0];
}
