import type { Basis } from '../core/model/guide.ts';
import { meaningOf, usesOf, type RowAt } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';
import { rowName } from './lookup/names.ts';

/**
 * A row of materials that is taken by another measure than the runs of a step that uses it: so much for a pot, used
 * model by model. A row for each model suits every step.
 */
export const basisMismatch: Check = {
  code: 'basis-mismatch',
  gravity: 'stops',
  find: (context) => context.guidesAt.flatMap((read) => ofGuide(read, context)),
};

function ofGuide(read: GuideAtLevel, context: Context): readonly Finding[] {
  return read.at.materials.flatMap((row, index) => {
    if (row.for.per === 'model') return [];
    const [step] = stepsUsing(read, row, index).filter((i) => !isSame(read.at.steps[i]!.for, row.for));
    return step === undefined ? [] : [finding(read, index, step, context)];
  });
}

/** Indexes of the steps that name a row, or something in the mix that it takes. */
function stepsUsing({ at }: GuideAtLevel, row: RowAt, index: number): readonly number[] {
  return at.steps.flatMap((step, i) => {
    const meanings = usesOf(at, step).map(({ material }) => meaningOf(at, material));
    const isUsed = meanings.some(
      ({ rows, ingredients }) => rows.includes(index) || ingredients.some(({ mix }) => mix === row.use),
    );
    return isUsed ? [i] : [];
  });
}

function isSame(a: Basis, b: Basis): boolean {
  return basisText(a) === basisText(b);
}

/** As an author writes it: "each stockpot". */
function basisText(basis: Basis): string {
  if (basis.per === 'part') return `each ${basis.part}`;
  if (basis.per === 'tool') return `each ${basis.tool}`;
  if (basis.per === 'every') return `every ${basis.models} models`;
  return basis.per === 'batch' ? 'the batch' : 'each model';
}

function finding(read: GuideAtLevel, index: number, step: number, { workspace }: Context): Finding {
  const [row, user] = [read.at.materials[index]!, read.at.steps[step]!];
  return {
    variant: user.for.per === 'model' ? 'model' : undefined,
    places: [read.place('materials', index, 'for'), read.place('steps', step, 'for')],
    facts: {
      material: rowName(workspace, read.at, row),
      basis: basisText(row.for),
      step: read.stepName(user.id),
      runs: basisText(user.for),
    },
  };
}
