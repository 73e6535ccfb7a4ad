import type { Workspace } from '../model/workspace.ts';
import { inCurrency } from '../money/money.ts';
import { type Exact, exact, zero } from '../quantity/exact.ts';
import type { Bought } from './buy.ts';
import { knowsCharge } from './deliveries.ts';
import { type Line, goodOnes } from './line.ts';
import { unitPrice } from './offers.ts';
import { sharedOutlay } from './outlay.ts';
import { costPerUse } from './per-use.ts';
import type { LineCost, PlanCost, Requirement, ToolNeed } from './result.ts';
import { toolOutlay, toolWear } from './tools.ts';
import { plus, usedByRow } from './used.ts';

/** What the costs of a plan are made of. */
export interface ToCost extends Bought {
  readonly lines: readonly Line[];
  readonly requirements: readonly Requirement[];
  readonly tools: readonly ToolNeed[];
  /** Person-minutes of hands-on of each line. */
  readonly handsOn: readonly number[];
  readonly workspace: Workspace;
}

/**
 * The six costs; none stands for another. A price that nobody knows counts as nothing and makes every sum that it
 * enters "at least".
 */
export function costOf(work: ToCost): PlanCost {
  const { lines, purchases, deliveries, tools, handsOn, workspace } = work;
  const outlay = [
    ...purchases.map(({ cost }) => cost ?? zero),
    ...deliveries.map(({ charge }) => charge),
  ].reduce(plus, zero);
  const toBuy = toolOutlay(tools, workspace);
  const wear = lines.map((line) => toolWear(line, workspace));
  const rows = lines.map((line) => usedByRow(line, workspace));
  const used = rows.map((costs) => costs.reduce(plus, zero));
  const shares = sharedOutlay(work, used);
  return {
    currency: workspace.program.currency,
    complete:
      purchases.every(({ cost }) => cost) &&
      work.requirements.every(
        ({ material, amount }) => priceOf(material, amount.unit, workspace) !== undefined,
      ) &&
      deliveries.every(({ supplier }) => knowsCharge(supplier, workspace.program)),
    toolsComplete: toBuy.complete && wear.every(({ complete }) => complete),
    outlay,
    cashToStart: outlay.add(toBuy.price),
    each: lines.map((line, i) => {
      const amounts = {
        rows: rows[i]!,
        used: used[i]!,
        outlay: shares[i]!,
        tools: wear[i]!.price,
        handsOn: handsOn[i]!,
      };
      return lineCost(line, amounts, workspace);
    }),
    handsOn: handsOn.reduce((sum, minutes) => sum + minutes, 0),
  };
}

function priceOf(material: string, unit: string, { materials, program }: Workspace): Exact | undefined {
  return unitPrice(materials[material]!, unit, program);
}

/** All models of a line together. */
interface LineAmounts {
  readonly rows: readonly Exact[];
  readonly used: Exact;
  readonly outlay: Exact;
  readonly tools: Exact;
  readonly handsOn: number;
}

function lineCost(
  line: Line,
  { rows, used, outlay, tools, handsOn }: LineAmounts,
  workspace: Workspace,
): LineCost {
  const { labour } = workspace.program;
  const wage = (labour && inCurrency(labour, workspace.program)) ?? zero;
  const each = (all: Exact): Exact => all.div(exact(goodOnes(line)));
  const perUse = costPerUse(line, rows, workspace);
  return {
    used: each(used),
    outlay: each(outlay),
    withTools: each(used.add(tools)),
    withLabour: each(used.add(tools).add(wage.mul(exact(handsOn)).div(exact(60)))),
    ...(perUse ? { perUse } : {}),
    handsOn,
  };
}
