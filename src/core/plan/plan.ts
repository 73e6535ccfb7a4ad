import type { Diagnostic } from '../diagnostic.ts';
import type { Workspace } from '../model/workspace.ts';
import { wantsOf } from './buy/buy.ts';
import { costOf } from './cost/cost.ts';
import { piecesToCut } from './cut/cut-pieces.ts';
import type { DemandLine, PlanSettings } from './demand.ts';
import { demanded } from './demand/demanded.ts';
import { fasterPacks } from './order/faster-packs.ts';
import { type Lines, withInserts } from './demand/inserts.ts';
import type { Line } from './demand/line.ts';
import { orderAndSchedule } from './order/order.ts';
import { personMinutes, runsOfPlan } from './demand/plan-runs.ts';
import { plannedLine } from './demand/planned-line.ts';
import { type Settings, readSettings } from './demand/read-settings.ts';
import { refusal } from './refusal.ts';
import { requirementsOf } from './scale/requirements.ts';
import type { Plan } from './result.ts';
import { toolNeeds } from './cost/tools.ts';
import { warningsOf } from './warnings.ts';

/** So many models of one line, those that fail included, are the most that are planned. */
const madeUpTo = 100_000;

/** So many pieces may be laid in search of better layouts of each material. Work, never seconds. */
const cuttingBudget = 10_000;

/**
 * The answer to one demand: how many to make, what each step takes, what to buy, what it costs, who does what when.
 *
 * A pure function of its arguments: same input, same plan, to the byte, on any machine.
 *
 * @returns The plan, which may carry warnings; or why none is made.
 * @throws {Bug} Where the workspace has errors that the checks find: plan only what they pass.
 */
export function makePlan(
  workspace: Workspace,
  demand: readonly DemandLine[],
  settings: PlanSettings,
): Plan | { readonly refused: readonly Diagnostic[] } {
  const asked = demanded(workspace, demand);
  const set = readSettings(workspace.program, settings);
  const refused = [...('refused' in asked ? asked.refused : []), ...('refused' in set ? set.refused : [])];
  if ('refused' in asked || 'refused' in set) return { refused };
  const all = withInserts(asked.lines, workspace, set.spares, set.finished);
  if ('refused' in all) return all;
  const tooMany = all.lines.filter(({ made }) => made > madeUpTo);
  return tooMany.length > 0 ? { refused: tooMany.map(tooManyMade) } : planLines(all, workspace, set);
}

function tooManyMade({ at, made }: Line): Diagnostic {
  return refusal('too-many-made', { guide: at.id, made: String(made), most: String(madeUpTo) });
}

function planLines(all: Lines, workspace: Workspace, set: Settings): Plan {
  const { lines } = all;
  const { clock, stock } = set;
  const requirements = requirementsOf(lines, workspace);
  const pieces = piecesToCut(lines, workspace);
  const wants = wantsOf({ requirements, pieces, workspace, stock, cutting: cuttingBudget });
  const runs = runsOfPlan(lines, workspace, clock);
  const work = { ...set, ...all, runs, workspace };
  const ordered = orderAndSchedule(wants, work);
  const { bought, schedule } = ordered;
  const tools = toolNeeds(lines, workspace, 'none' in schedule ? [] : schedule.jobs);
  const handsOn = lines.map((_, line) => personMinutes(runs.filter((run) => run.line === line)));
  const plan = {
    lines: lines.map(plannedLine),
    requirements,
    ...bought,
    tools,
    cost: costOf({ ...bought, ...all, requirements, tools, handsOn, workspace }),
    schedule,
  };
  const faster = fasterPacks(wants, work, ordered);
  return { ...plan, warnings: warningsOf({ plan, lines, runs, workspace, clock, stock, faster }) };
}
