import type { Workspace } from '../../model/workspace.ts';
import { inCurrency } from '../../money/money.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import type { Line } from '../demand/line.ts';
import { peakOf } from '../schedule/peak.ts';
import { mostByOne, toolsNamed } from '../schedule/resources.ts';
import type { PlannedJob, ToolNeed } from '../result.ts';
import { modelsServed } from '../scale/runs.ts';
import { type StepAt, type ToolRowAt, isInHand } from '../scale/step-uses.ts';

/**
 * How many of each tool are needed at once, owned, and to buy. Without a schedule, what a single run takes.
 *
 * @param jobs  Of the schedule; none where there is none.
 */
export function toolNeeds(
  lines: readonly Line[],
  { program }: Workspace,
  jobs: readonly PlannedJob[],
): readonly ToolNeed[] {
  return toolsNamed(lines.filter(({ made }) => made > 0)).map((tool) => {
    const peak = Math.max(peakOf(tool, lines, jobs), mostByOne(lines, tool));
    const owned = program.owned[tool];
    return { tool, peak, ...(owned === undefined ? {} : { owned }), toBuy: Math.max(0, peak - (owned ?? 0)) };
  });
}

/** Price of the tools to buy; `complete` is no where one has no price. */
export function toolOutlay(
  needs: readonly ToolNeed[],
  workspace: Workspace,
): { readonly price: Exact; readonly complete: boolean } {
  const toBuy = needs.filter((need) => need.toBuy > 0);
  const prices = toBuy.map(({ tool }) => toolPrice(tool, workspace));
  const price = toBuy.reduce((sum, need, i) => sum.add((prices[i] ?? zero).mul(exact(need.toBuy))), zero);
  return { price, complete: prices.every((known) => known !== undefined) };
}

/** In the program's currency; `undefined` where nobody says, or there is no rate. */
export function toolPrice(tool: string, { tools, program }: Workspace): Exact | undefined {
  const price = tools[tool]?.price;
  return price && inCurrency(price, program);
}

/**
 * The share of the tools' price that building a line wears off: each use, by the uses in a tool's life. One hold is
 * one use, and so is one run with the tool in hand; a tool that is only listed is used once for each model it holds. A
 * tool of which nobody says how long it lasts does not wear.
 */
export function toolWear(
  line: Line,
  workspace: Workspace,
): { readonly price: Exact; readonly complete: boolean } {
  const worn = line.at.tools.flatMap((row) => {
    const lasts = workspace.tools[row.use]?.lasts;
    return lasts === undefined
      ? []
      : [{ share: exact(usesOfTool(line, row)).div(exact(lasts)), price: toolPrice(row.use, workspace) }];
  });
  return {
    price: worn.reduce((sum, { share, price }) => sum.add(share.mul(price ?? zero)), zero),
    complete: worn.every(({ price }) => price !== undefined),
  };
}

/** Runs that are past, and holds that they began, have worn theirs. */
function usesOfTool({ at, made, past }: Line, row: ToolRowAt): number {
  const runsOf = (step: StepAt, index: number): number =>
    isInHand(at, row, step) ? Math.ceil((made - past[index]!) / modelsServed(at, step.for, made)) : 0;
  const handled = at.steps.map(runsOf).reduce((sum, runs) => sum + runs, 0);
  const isInHandOnly = !row.held && at.steps.some((step) => isInHand(at, row, step));
  const begun = past[at.steps.findIndex(({ id }) => id === row.held?.from)] ?? 0;
  const holds = Math.ceil(made / row.holds) - Math.ceil(begun / row.holds);
  return (handled + (isInHandOnly ? 0 : holds)) * row.count;
}
