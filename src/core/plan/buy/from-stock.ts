import type { Workspace } from '../../model/workspace.ts';
import { type Exact, zero } from '../../quantity/exact.ts';
import type { Line } from '../demand/line.ts';
import { requirementsOf } from '../scale/requirements.ts';
import type { CuttingPlan, Purchase } from '../result.ts';
import { needsLeft } from '../demand/needs-left.ts';

/**
 * Of each line how many of the first models the stock of a material is enough for: they need not wait for what is
 * ordered. Lines are served in their order.
 *
 *     200 g in stock, 120 g a model   ->   model 1 begins at once, the others when the rest is there
 *
 * @param cut  Of what is cut: the models before the first that has a piece from what is bought.
 */
export function modelsFromStock(
  { material, fromStock }: Purchase,
  cut: CuttingPlan | undefined,
  lines: readonly Line[],
  workspace: Workspace,
): readonly number[] {
  if (cut) return lines.map(({ made }, line) => Math.min(made, firstFromPacks(cut, line) - 1));
  let left = fromStock.value;
  return lines.map((line) => {
    const needed = (models: number): Exact => needOf(material, line, models, workspace);
    const models = mostFor(line.made, (count) => needed(count).compare(left) <= 0);
    left = left.sub(needed(models));
    return models;
  });
}

/** The first model of a line with a piece from a pack. */
function firstFromPacks({ layouts }: CuttingPlan, line: number): number {
  const bought = layouts.filter(({ pack }) => pack !== undefined).flatMap(({ pieces }) => pieces);
  const models = bought.flatMap((piece) => (piece.line === line ? (piece.model ?? []) : []));
  return models.reduce((first, model) => Math.min(first, model), Infinity);
}

/** What the first models of a line take of a material, in the unit in which it is bought. */
function needOf(material: string, line: Line, models: number, workspace: Workspace): Exact {
  const requirements = requirementsOf([{ at: line.at, needs: needsLeft(line, models) }], workspace);
  return requirements.find((requirement) => requirement.material === material)?.amount.value ?? zero;
}

/** The greatest number up to `most` for which there is enough; there is for 0, and what is not for one is not for more. */
function mostFor(most: number, isEnough: (count: number) => boolean): number {
  let [enough, tooMany] = [0, most + 1];
  while (tooMany - enough > 1) {
    const middle = Math.floor((enough + tooMany) / 2);
    if (isEnough(middle)) enough = middle;
    else tooMany = middle;
  }
  return enough;
}
