import type { Diagnostic } from '../diagnostic.ts';
import type { Workspace } from '../model/workspace.ts';
import { arrivalsOf, datedDeliveries } from './arrivals.ts';
import { buy } from './buy.ts';
import { costOf } from './cost.ts';
import type { DemandLine, PlanSettings } from './demand.ts';
import { demanded } from './demanded.ts';
import { type Lines, withInserts } from './inserts.ts';
import type { Line } from './line.ts';
import { personMinutes, runsOfPlan } from './plan-runs.ts';
import { planSchedule } from './plan-schedule.ts';
import { plannedLine } from './planned-line.ts';
import { type Settings, readSettings } from './read-settings.ts';
import { refusal } from './refusal.ts';
import { requirementsOf } from './requirements.ts';
import type { Plan } from './result.ts';
import { toolNeeds } from './tools.ts';
import { warningsOf } from './warnings.ts';

/** So many models of one line, those that fail included, are the most that are planned. */
const madeUpTo = 100_000;

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
  const all = withInserts(asked.lines, workspace, set.spares);
  if ('refused' in all) return all;
  const tooMany = all.lines.filter(({ made }) => made > madeUpTo);
  return tooMany.length > 0 ? { refused: tooMany.map(tooManyMade) } : planLines(all, workspace, set);
}

function tooManyMade({ at, made }: Line): Diagnostic {
  return refusal('too-many-made', { guide: at.id, made: String(made), most: String(madeUpTo) });
}

function planLines(all: Lines, workspace: Workspace, { clock, builders, stock, effort }: Settings): Plan {
  const { lines } = all;
  const requirements = requirementsOf(lines, workspace);
  const bought = buy(requirements, workspace, stock, cutFrom(lines));
  const runs = runsOfPlan(lines, workspace, clock);
  const arrivals = arrivalsOf(bought.purchases, lines, workspace, clock);
  const schedule = planSchedule({ ...all, runs, workspace, clock, arrivals, builders, effort });
  const tools = toolNeeds(lines, workspace, 'none' in schedule ? [] : schedule.jobs);
  const handsOn = lines.map((_, line) => personMinutes(runs.filter((run) => run.line === line)));
  const plan = {
    lines: lines.map(plannedLine),
    requirements,
    purchases: bought.purchases,
    deliveries: datedDeliveries(bought.deliveries, bought.purchases, workspace, clock),
    tools,
    cost: costOf({ ...bought, ...all, requirements, tools, handsOn, workspace }),
    schedule,
  };
  return { ...plan, warnings: warningsOf({ plan, lines, runs, workspace }) };
}

/** Materials that pieces are cut from. */
function cutFrom(lines: readonly Line[]): ReadonlySet<string> {
  const rows = lines.flatMap(({ at }) => at.materials.filter(({ pieces }) => pieces.length > 0));
  return new Set(rows.map(({ use }) => use));
}
