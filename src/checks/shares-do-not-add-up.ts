import type { Place } from '../core/diagnostic.ts';
import type { Amount } from '../core/model/values.ts';
import { type Named, type StepUseAt, meaningOf, usesOf } from '../core/plan/scale/step-uses.ts';
import { zero } from '../core/quantity/exact.ts';
import { printMeasure } from '../core/quantity/print.ts';
import type { Measure } from '../core/quantity/quantity.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';
import { type Density, densityOf, inUnit, mostOf } from './lookup/convertible.ts';
import { materialName, rowName } from './lookup/names.ts';
import { amountOfRow } from './lookup/row-keys.ts';
import { placeOfUse } from './lookup/step-uses.ts';

/** Amounts that steps take of a row, or of an ingredient, and that come to more or less than there is of it. */
export const sharesDoNotAddUp: Check = {
  code: 'shares-do-not-add-up',
  gravity: 'stops',
  find: (context) =>
    context.guidesAt.flatMap((read) => {
      const namings = namingsIn(read);
      return [
        ...read.at.materials.flatMap((_, row) => ofRow(read, row, namings, context)),
        ...read.at.mixes.flatMap((_, mix) => ofMix(read, mix, namings, context)),
      ];
    }),
};

/** One name in the `uses` of one step. */
interface Naming {
  readonly use: StepUseAt;
  readonly meaning: Named;
  readonly place: Place;
}

function namingsIn(read: GuideAtLevel): readonly Naming[] {
  return read.at.steps.flatMap((step, index) =>
    usesOf(read.at, step).map((use, i) => ({
      use,
      meaning: meaningOf(read.at, use.material),
      place: placeOfUse(read, index, i, use.amount ? 'amount' : 'pieces'),
    })),
  );
}

/** Something to share out. */
interface Whole {
  readonly name: string;
  readonly measure: Measure;
  readonly density: Density;
  readonly key: string;
  readonly place: Place;
}

function ofRow(
  read: GuideAtLevel,
  index: number,
  namings: readonly Naming[],
  context: Context,
): readonly Finding[] {
  const row = read.at.materials[index]!;
  const own = namings.filter(({ meaning }) => meaning.rows.includes(index));
  const name = rowName(context.workspace, read.at, row);
  const { amount } = row;
  if (!amount) return unusedPieces(read, index, own, name);
  // A name that stands for several rows at once shares out their sum: told at the first of them.
  const together = own[0]?.meaning.rows ?? [];
  if (together[0] !== index || own.some(({ meaning }) => meaning.rows.join() !== together.join())) return [];
  const density = densityOf(context.workspace.materials[row.use]);
  const measure = sumOf(
    together.map((i) => read.at.materials[i]!.amount!).filter(Boolean),
    amount.unit,
    density,
  );
  return measure ? compared({ name, measure, density, ...amountOfRow(read, index) }, own) : [];
}

function ofMix(
  read: GuideAtLevel,
  mix: number,
  namings: readonly Naming[],
  { workspace }: Context,
): readonly Finding[] {
  const { id, of } = read.at.mixes[mix]!;
  return of.flatMap(({ use, amount }, index) => {
    const isIt = (one: Named['ingredients'][number]): boolean => one.mix === id && one.index === index;
    const own = namings.filter(({ meaning }) => meaning.ingredients.some(isIt));
    const density = densityOf(workspace.materials[use]);
    const place = read.place('mixes', mix, 'of', index, 'amount');
    return compared(
      { name: materialName(workspace, use), measure: mostOf(amount), density, key: 'amount', place },
      own,
    );
  });
}

/** Steps that say an amount take that; one that says none takes the rest. */
function compared({ name, measure, density, key, place }: Whole, own: readonly Naming[]): readonly Finding[] {
  const saying = own.filter(({ use }) => use.amount);
  const sum = sumOf(
    saying.map(({ use }) => use.amount!),
    measure.unit,
    density,
  );
  if (saying.length === 0 || !sum) return [];
  const difference = sum.value.compare(measure.value);
  if (difference === 0 || (difference < 0 && saying.length < own.length)) return [];
  return [
    {
      variant: difference > 0 ? 'more' : 'less',
      places: [place, ...saying.map((naming) => naming.place)],
      facts: { material: name, key, sum: printMeasure(sum), whole: printMeasure(measure) },
    },
  ];
}

/** `undefined` where they cannot be summed: `unit-mismatch` speaks of that. */
function sumOf(amounts: readonly Amount[], unit: string, density: Density): Measure | undefined {
  const inOne = amounts.map((amount) => inUnit(mostOf(amount), unit, density));
  return inOne.every((value) => value !== undefined)
    ? { value: inOne.reduce((sum, value) => sum.add(value), zero), unit }
    : undefined;
}

/** Pieces that no step takes, where each step that names the row says which it takes. */
function unusedPieces(
  read: GuideAtLevel,
  index: number,
  own: readonly Naming[],
  name: string,
): readonly Finding[] {
  const taken = own.flatMap(({ use }) => use.pieces ?? []);
  if (own.length === 0 || own.some(({ use }) => !use.pieces)) return [];
  return read.at.materials[index]!.pieces.flatMap(({ id }, i) =>
    taken.includes(id)
      ? []
      : [
          {
            variant: 'piece',
            places: [
              read.place('materials', index, 'pieces', i, 'id'),
              ...own.map(({ place }) => place),
            ] as const,
            facts: { material: name, piece: id },
          },
        ],
  );
}
