import { type StepUseAt, meaningOf, usesOf } from '../../core/plan/scale/step-uses.ts';
import type { Context, GuideAtLevel } from './context.ts';
import { inWords, materialName, rowName } from './names.ts';
import { amountOfRow } from './row-keys.ts';
import { placeOfUse } from './step-uses.ts';
import { type Measured, type UnitPair, unitOfRow } from './unit-pairs.ts';

/** Rows that take a mix against what it makes. */
export function mixPairs(read: GuideAtLevel): readonly UnitPair[] {
  const { materials, mixes } = read.at;
  return materials.flatMap((row, i) => {
    const mix = mixes.findIndex(({ id }) => id === row.use);
    const one = mix < 0 ? undefined : unitOfRow(read, i);
    if (!one) return [];
    const { id, name = inWords(id), makes } = mixes[mix]!;
    return [
      {
        kind: 'mix' as const,
        name,
        one,
        other: { unit: makes.unit, place: read.place('mixes', mix, 'makes') },
      },
    ];
  });
}

/** Gaps between pieces against a length. */
export function gapPairs(read: GuideAtLevel, { workspace }: Context): readonly UnitPair[] {
  return read.at.materials.flatMap((row, i) => {
    if (!row.gap) return [];
    const place = read.place('materials', i, 'gap');
    const [one, other] = [row.gap.unit, 'mm'].map((unit) => ({ unit, place }));
    return [{ kind: 'gap' as const, name: rowName(workspace, read.at, row), one: one!, other: other! }];
  });
}

/** Amounts that steps take of a row, or of an ingredient, against what it has. */
export function sharePairs(read: GuideAtLevel, context: Context): readonly UnitPair[] {
  return read.at.steps.flatMap((step, index) =>
    usesOf(read.at, step).flatMap((use, i) => {
      if (!use.amount) return [];
      const one = { unit: use.amount.unit, place: placeOfUse(read, index, i, 'amount') };
      return wholesOf(read, use, context).map((whole) => ({ kind: 'share' as const, one, ...whole }));
    }),
  );
}

type Whole = Pick<UnitPair, 'name' | 'other' | 'material'>;

/** What a name in a step's uses takes its share of. */
function wholesOf(
  read: GuideAtLevel,
  { material: named }: StepUseAt,
  { workspace }: Context,
): readonly Whole[] {
  const { at } = read;
  const { rows, ingredients } = meaningOf(at, named);
  const ofRows = rows.flatMap((i) => {
    const row = at.materials[i]!;
    const isMix = at.mixes.some(({ id }) => id === row.use);
    if (!row.amount) return [];
    const other: Measured = { unit: row.amount.unit, place: amountOfRow(read, i).place };
    return [{ name: rowName(workspace, at, row), other, ...(isMix ? {} : { material: row.use }) }];
  });
  const inMixes = ingredients.map(({ mix: id, index }) => {
    const mix = at.mixes.findIndex((one) => one.id === id);
    const { use, amount } = at.mixes[mix]!.of[index]!;
    const other: Measured = { unit: amount.unit, place: read.place('mixes', mix, 'of', index, 'amount') };
    return { name: materialName(workspace, use), other, material: use };
  });
  return [...ofRows, ...inMixes];
}
