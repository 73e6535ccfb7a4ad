import { readFile } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import { check, makePlan, readWorkspace } from '../index.ts';
import type { Diagnostic } from '../core/diagnostic.ts';
import type { IsoDate } from '../core/model/values.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { DemandLine, PlanSettings } from '../core/plan/demand.ts';
import type { Plan } from '../core/plan/result.ts';
import { jsonText } from '../exports/json-text.ts';
import { planJson } from '../exports/plan-json.ts';
import { readStock, type Stock } from '../reading/stock.ts';
import { fill, listed } from '../showing/fill.ts';
import { planText } from '../showing/plan-text.ts';
import { showPlan } from '../showing/show-plan.ts';
import { outcomeWords } from '../words/command-line.ts';
import type { Call } from './arguments.ts';
import type { Command } from './command.ts';
import { concerning } from './concerning.ts';
import { faultsOfDemand, isFault, readDemand } from './demand.ts';
import { fault, sayFaults } from './fault.ts';
import { findingsText, hasErrors } from './findings.ts';
import { findWorkspace } from './folder.ts';
import { inkFor } from './ink.ts';
import { progressOn } from './progress.ts';
import { todayOf } from './today.ts';
import type { ExitStatus, World } from './world.ts';

/** What to buy, what it costs, who does what when. The plan goes to standard output, findings to standard error. */
export const plan: Command = {
  name: 'plan',
  options: ['batch', 'builders', 'format', 'spares', 'start', 'stock', 'today', 'workspace'],
  run: async (call, world) => {
    const lines = call.words.map((word) => readDemand(word, call.values.batch));
    const found = findWorkspace(call, world, { takesWord: false, command: 'plan' });
    const today = todayOf(call, world);
    const faults = [
      ...lines.filter(isFault),
      ...('faults' in found ? found.faults : []),
      ...(typeof today === 'string' ? [] : [today]),
    ];
    if (faults.length > 0 || 'faults' in found || typeof today !== 'string')
      return sayFaults(world, faults, 'plan');
    const demand = lines.flatMap((line) => (isFault(line) ? [] : [line]));
    return planIn(found.folder, demand, today, call, world);
  },
};

async function planIn(
  folder: string,
  demand: readonly DemandLine[],
  today: IsoDate,
  call: Call,
  world: World,
): Promise<ExitStatus> {
  const read = await readWorkspace(folder);
  const { workspace, unread } = read;
  const faults = workspace ? faultsOfDemand(demand, workspace.guides, unread) : [];
  if (faults.length > 0) return sayFaults(world, faults, 'plan');
  const guides = [...new Set(demand.map(({ guide }) => guide))];
  const findings = concerning(guides, check(read, { today, compared: guides }), workspace);
  world.err.write(findingsText(findings, inkFor(world.err, world)));
  if (!workspace || hasErrors(findings)) return notPlanned(guides, world);
  const stock = await stockOf(call, workspace, world);
  return 'status' in stock
    ? stock.status
    : answer(workspace, demand, settingsOf(call, today, stock.stock), call, world);
}

function notPlanned(guides: readonly string[], world: World): ExitStatus {
  world.err.write(`${fill(outcomeWords.refused, { guides: listed(guides) })}\n`);
  return 1;
}

/** The stock file that the call names, read; or the status of a call whose file cannot be. */
async function stockOf(
  { values }: Call,
  workspace: Workspace,
  world: World,
): Promise<{ readonly stock: Stock } | { readonly status: ExitStatus }> {
  if (values.stock === undefined) return { stock: {} };
  const bytes = await readFile(resolve(world.folder, values.stock)).catch(() => undefined);
  if (!bytes) return { status: sayFaults(world, [fault('no-such-file', { file: values.stock })], 'plan') };
  const read = readStock(basename(values.stock), bytes, workspace.materials);
  if ('stock' in read) return read;
  world.err.write(findingsText(read.refused, inkFor(world.err, world)));
  return { status: 1 };
}

function settingsOf({ values }: Call, today: IsoDate, stock: Stock): PlanSettings {
  const { builders, spares, start } = values;
  return {
    today,
    stock,
    ...(builders === undefined ? {} : { builders }),
    ...(spares === undefined ? {} : { spares }),
    ...(start === undefined ? {} : { start }),
  };
}

function answer(
  workspace: Workspace,
  demand: readonly DemandLine[],
  settings: PlanSettings,
  call: Call,
  world: World,
): ExitStatus {
  const progress = progressOn(world);
  progress.say(outcomeWords.planning);
  const made = makePlan(workspace, demand, settings);
  progress.done();
  if ('refused' in made) return refused(made.refused, world);
  world.out.write(
    call.values.format === 'json' ? jsonText(planJson(made, workspace)) : textOf(made, workspace, world),
  );
  return isImpossible(made) ? 3 : 0;
}

function refused(findings: readonly Diagnostic[], world: World): ExitStatus {
  world.err.write(findingsText(findings, inkFor(world.err, world)));
  return 1;
}

/** As wide as the terminal, within what reads well; 80 columns on a pipe, so that the bytes do not depend on it. */
function textOf(made: Plan, workspace: Workspace, { out }: World): string {
  const width = out.isTerminal && out.columns ? Math.min(Math.max(out.columns, 60), 100) : 80;
  return planText(showPlan(made, workspace), width);
}

/** What to buy is still known; but the work cannot be done as asked, or no way was found. */
function isImpossible({ schedule }: Plan): boolean {
  return 'none' in schedule && schedule.none.code !== 'too-many-runs';
}
