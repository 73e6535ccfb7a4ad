import type { Workspace } from '../../model/workspace.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import { type Measure, convert, times } from '../../quantity/quantity.ts';
import type { Line } from '../demand/line.ts';
import { densityOf } from '../scale/requirements.ts';
import type { PlannedJob } from '../result.ts';
import { stockFor } from '../scale/scale.ts';
import type { Draw } from '../scale/shares.ts';
import { materialDrawn } from '../schedule/windows.ts';

/** A run that draws on a material. */
export interface Use {
  readonly line: number;
  readonly models: readonly number[];
  readonly start: number;
  readonly end: number;
  /** As much as its models are of all that are still made in that step. */
  readonly amount: Measure;
}

/** When each material is used, in order of start. */
export function usesOf(
  jobs: readonly PlannedJob[],
  lines: readonly Line[],
  { materials }: Workspace,
): ReadonlyMap<string, readonly Use[]> {
  const uses = new Map<string, Use[]>();
  const modelsIn = new Map<string, number>();
  const keyOf = ({ line, step }: PlannedJob): string => `${line} ${step}`;
  for (const job of jobs) modelsIn.set(keyOf(job), (modelsIn.get(keyOf(job)) ?? 0) + job.models.length);
  for (const job of jobs) {
    const line = lines[job.line]!;
    for (const draw of line.draws.filter(({ step }) => line.at.steps[step]!.id === job.step)) {
      const material = materialDrawn(line.at, draw);
      if (!materials[material]) continue;
      const share = zero.add(job.models.length).div(modelsIn.get(keyOf(job))!);
      const { start, end, models } = job;
      const use = { line: job.line, models, start, end, amount: times(drawnBy(draw, line), share) };
      uses.set(material, [...(uses.get(material) ?? []), use]);
    }
  }
  return uses;
}

function drawnBy(draw: Draw, { at, needs }: Line): Measure {
  if (draw.of === 'ingredient') {
    const { ingredients } = needs.mixes.find(({ mix }) => mix === draw.mix)!;
    return times(ingredients[draw.index]!.total, draw.share);
  }
  const { total, pieces } = needs.rows[draw.row]!;
  if (draw.of === 'row') return times(total, draw.share);
  return stockFor(
    at.materials[draw.row]!,
    pieces.filter(({ piece }) => draw.pieces.includes(piece)),
  );
}

/** The amount of a use in the unit in which the material is bought. */
export function amountIn(unit: string, { amount }: Use, material: Workspace['materials'][string]): Exact {
  return convert(amount, unit, densityOf(material)).value;
}
