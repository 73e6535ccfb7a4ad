import type { Workspace } from '../model/workspace.ts';
import { inCurrency } from '../money/money.ts';
import { type Exact, exact, zero } from '../quantity/exact.ts';
import type { Line } from './line.ts';
import { peakOf } from './peak.ts';
import { mostByOne, toolsNamed } from './resources.ts';
import type { PlannedJob, ToolNeed } from './result.ts';
import { modelsServed } from './runs.ts';
import { type ToolRowAt, isInHand } from './step-uses.ts';

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
  return toolsNamed(lines).map((tool) => {
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

function usesOfTool({ at, made }: Line, row: ToolRowAt): number {
  const inHand = at.steps.filter((step) => isInHand(at, row, step));
  const handled = inHand.reduce((sum, step) => sum + Math.ceil(made / modelsServed(at, step.for, made)), 0);
  const held = row.held || inHand.length === 0 ? Math.ceil(made / row.holds) : 0;
  return (handled + held) * row.count;
}
