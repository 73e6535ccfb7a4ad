import type { Workspace } from '../../model/workspace.ts';
import { inCurrency } from '../../money/money.ts';
import { type Exact, exact, zero } from '../../quantity/exact.ts';
import { knowsCharge } from '../buy/deliveries.ts';
import { type Lines, borneBy, rolledUp } from '../demand/inserts.ts';
import { forEachGood } from '../demand/line.ts';
import { unitPrice } from '../supply/offers.ts';
import { outlayOf, sharedOutlay, type ToShare } from './outlay.ts';
import { costPerUse } from './per-use.ts';
import type { LineCost, PlanCost, ToolNeed } from '../result.ts';
import { toolOutlay, toolWear } from './tools.ts';
import { plus, usedByRow } from './used.ts';

/** What the costs of a plan are made of. */
export interface ToCost extends ToShare, Lines {
  readonly tools: readonly ToolNeed[];
  /** Person-minutes of hands-on of each line. */
  readonly handsOn: readonly number[];
}

/**
 * The six costs; none stands for another. A price that nobody knows counts as nothing and makes every sum that it
 * enters "at least".
 */
export function costOf(work: ToCost): PlanCost {
  const { lines, tools, handsOn, workspace } = work;
  const outlay = outlayOf(work);
  const toBuy = toolOutlay(tools, workspace);
  return {
    currency: workspace.program.currency,
    complete: knowsPrices(work),
    toolsComplete: toBuy.complete && lines.every((line) => toolWear(line, workspace).complete),
    outlay,
    cashToStart: outlay.add(toBuy.price),
    each: lineCosts(work),
    handsOn: handsOn.reduce((sum, minutes) => sum + minutes, 0),
  };
}

/** Whether every pack, every usual price, and every delivery is known. */
function knowsPrices({ lines, requirements, purchases, deliveries, workspace }: ToCost): boolean {
  const { materials, program } = workspace;
  const between = lines.flatMap(({ at }) => at.inUse.between?.uses ?? []);
  const priced = [...requirements, ...between].map(({ material, amount }) =>
    unitPrice(materials[material]!, amount.unit, program),
  );
  return (
    purchases.every(({ cost }) => cost !== undefined) &&
    priced.every((price) => price !== undefined) &&
    deliveries.every(({ supplier }) => knowsCharge(supplier, program))
  );
}

/** Of each line, with the models that go into its own; divided by its good ones. */
function lineCosts(work: ToCost): readonly LineCost[] {
  const { lines, handsOn, workspace } = work;
  const wage = hourlyWage(workspace);
  const ownRows = lines.map((line) => usedByRow(line, workspace));
  const ownUsed = ownRows.map((costs) => costs.reduce(plus, zero));
  const used = rolledUp(work, ownUsed);
  const outlay = rolledUp(work, sharedOutlay(work, ownUsed));
  const tools = rolledUp(
    work,
    lines.map((line) => toolWear(line, workspace).price),
  );
  const labour = rolledUp(
    work,
    handsOn.map((minutes) => wage.mul(exact(minutes)).div(exact(60))),
  );
  return lines.map((line, i) => {
    const each = (all: Exact): Exact => forEachGood(line, all);
    const perUse = costPerUse(line, withInserts(work, i, ownRows[i]!, used), workspace);
    return {
      used: each(used[i]!),
      outlay: each(outlay[i]!),
      withTools: each(used[i]!.add(tools[i]!)),
      withLabour: each(used[i]!.add(tools[i]!).add(labour[i]!)),
      ...(perUse ? { perUse } : {}),
      handsOn: handsOn[i]!,
    };
  });
}

/** For one person; nothing where the program pays none. */
function hourlyWage({ program }: Workspace): Exact {
  return (program.labour && inCurrency(program.labour, program)) ?? zero;
}

/** Used cost of each row of a line, where a row uses models of another line that of those. */
function withInserts(
  { lines, inserts }: Lines,
  line: number,
  rows: readonly Exact[],
  used: readonly Exact[],
): readonly Exact[] {
  return rows.map((own, row) => {
    const insert = inserts.find((other) => other.into === line && other.row === row);
    return insert ? borneBy(insert, lines, used[insert.of]!) : own;
  });
}
