import type { GuideAt, RowsWithLevels } from '../../model/guide.ts';
import { exact, one, rational, zero } from '../../quantity/exact.ts';
import { type DensityOf, type Draw, drawsOf } from '../scale/shares.ts';
import { type RowAt, type StepAt, indexesOf } from '../scale/step-uses.ts';

/**
 * A guide with only what makes one of its parts: the steps for each of it, and of each row what they use.
 *
 *     frame, skin   ->   skin alone: pour-skin, cure-skin; 40 of the 60 g of silicone
 *
 * Steps follow each other as they did; what came before them from other parts is taken to be there.
 */
export function partAlone(at: GuideAt, part: string, densityOf: DensityOf): GuideAt {
  const isOwn = ({ for: basis }: StepAt): boolean => basis.per === 'part' && basis.part === part;
  const steps = indexesOf(at.steps, isOwn);
  const draws = drawsOf(at, densityOf).filter(({ step }) => steps.includes(step));
  const rows = indexesOf(at.materials, (_, row) =>
    draws.some((draw) => draw.of !== 'ingredient' && draw.row === row),
  );
  const names = new Set(steps.map((step) => at.steps[step]!.id));
  const checks = indexesOf(at.checks, ({ after }) => after !== undefined && names.has(after));
  const cautions = indexesOf(
    at.cautions,
    (caution) => caution.steps.length === 0 || caution.steps.some((id) => names.has(id)),
  );
  return {
    ...at,
    parts: at.parts.filter(({ id }) => id === part),
    steps: steps.map((step) => following(at, at.steps[step]!, names)),
    materials: rows.map((row) =>
      partOfRow(
        at.materials[row]!,
        draws.filter((draw) => draw.of !== 'ingredient' && draw.row === row),
      ),
    ),
    checks: checks.map((check) => at.checks[check]!),
    cautions: cautions.map((caution) => at.cautions[caution]!),
    originOf: { ...at.originOf, ...originsOf(at, { steps, materials: rows, checks, cautions }) },
  };
}

function originsOf(at: GuideAt, kept: Partial<Record<RowsWithLevels, readonly number[]>>) {
  return Object.fromEntries(
    Object.entries(kept).map(([rows, indexes]) => [
      rows,
      indexes.map((index) => at.originOf[rows as RowsWithLevels][index]!),
    ]),
  );
}

/** The step after those of its part that came before it, near or far. */
function following(at: GuideAt, step: StepAt, names: ReadonlySet<string>): StepAt {
  const found = new Set<string>();
  const passed = new Set(step.after);
  for (const id of passed) {
    if (names.has(id)) found.add(id);
    else at.steps.find((other) => other.id === id)?.after.forEach((before) => passed.add(before));
  }
  return { ...step, after: [...found] };
}

function partOfRow(row: RowAt, draws: readonly Draw[]): RowAt {
  const named = draws.flatMap((draw) => (draw.of === 'pieces' ? draw.pieces : []));
  const share = draws.reduce((sum, draw) => (draw.of === 'row' ? sum.add(draw.share) : sum), zero);
  const scale = (value: string): string => rational(exact(value).mul(share));
  const { amount } = row;
  if (!amount || share.equals(one))
    return { ...row, pieces: row.pieces.filter(({ id }) => named.includes(id)) };
  const { least, usual, most, unit } = amount;
  return { ...row, amount: { least: scale(least), usual: scale(usual), most: scale(most), unit } };
}
