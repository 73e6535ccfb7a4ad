import type { Diagnostic } from '../diagnostic.ts';
import { type InPieces, atOnce } from '../in-pieces.ts';
import type { Workspace } from '../model/workspace.ts';
import { costOf } from './cost/cost.ts';
import { toolNeeds } from './cost/tools.ts';
import type { DemandLine, PlanSettings } from './demand.ts';
import { personMinutes } from './demand/plan-runs.ts';
import { plannedLine } from './demand/planned-line.ts';
import { ordering } from './order/order.ts';
import type { Plan } from './result.ts';
import { warningsOf } from './warnings.ts';
import { type Work, workingOut } from './work.ts';

/** So many pieces may be laid in search of better layouts of each material. Work, never seconds. */
export const cuttingBudget = 10_000;

/**
 * The answer to one demand: how many to make, what each step takes, what to buy, what it costs, who does what when.
 *
 * A pure function of its arguments: same input, same plan, to the byte, on any machine. What else could be done is
 * worked out after it: see `advised`, `whatIf` and `outlayCurve`.
 *
 * @returns The plan, which may carry warnings; or why none is made.
 * @throws {Bug} Where the workspace has errors that the checks find: plan only what they pass.
 */
export function makePlan(
  workspace: Workspace,
  demand: readonly DemandLine[],
  settings: PlanSettings,
): Plan | { readonly refused: readonly Diagnostic[] } {
  return atOnce(planning(workspace, demand, settings));
}

/** The same plan, in small pieces of work. */
export function* planning(
  workspace: Workspace,
  demand: readonly DemandLine[],
  settings: PlanSettings,
): InPieces<Plan | { readonly refused: readonly Diagnostic[] }> {
  const work = yield* workingOut(workspace, demand, settings, cuttingBudget);
  return 'refused' in work ? work : yield* planOf(work);
}

function* planOf(work: Work): InPieces<Plan> {
  const { lines, requirements, runs, workspace } = work;
  const { bought, schedule } = yield* ordering(work);
  yield;
  const tools = toolNeeds(lines, workspace, 'none' in schedule ? [] : schedule.jobs);
  yield;
  const handsOn = lines.map((_, line) => personMinutes(runs.filter((run) => run.line === line)));
  const cost = costOf({ ...work, ...bought, tools, handsOn });
  yield;
  const plan = { lines: lines.map(plannedLine), requirements, ...bought, tools, cost, schedule };
  return { ...plan, warnings: warningsOf({ ...work, plan }) };
}
