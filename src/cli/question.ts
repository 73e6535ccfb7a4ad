import { check, readWorkspace } from '../index.ts';
import type { Diagnostic } from '../core/diagnostic.ts';
import { guidesOfModule } from '../core/model/guides-of-module.ts';
import type { IsoDate } from '../core/model/values.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { DemandLine, PlanSettings } from '../core/plan/demand.ts';
import { findingsJson } from '../exports/findings-json.ts';
import { jsonText } from '../exports/json-text.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { showDiagnostic } from '../showing/terminal/diagnostic.ts';
import { fill, listed } from '../showing/text/fill.ts';
import { outcomeWords } from '../words/outcomes.ts';
import type { Call } from './arguments.ts';
import { concerning } from './concerning.ts';
import { faultsOfDemand, isFault, readDemand } from './demand.ts';
import { type Fault, sayFaults } from './fault.ts';
import { findingsText, hasErrors } from './findings.ts';
import { findWorkspace } from './folder.ts';
import { inkFor } from './ink.ts';
import { faultsOfSettings, settingsOf } from './plan-settings.ts';
import { askedOfModule, type AskedSession, faultsOfModule, moduleNamed } from './session.ts';
import { stockOf } from './stock.ts';
import { todayOf } from './today.ts';
import type { ExitStatus, World } from './world.ts';

/** What a plan is asked for. */
export interface Question {
  readonly workspace: Workspace;
  readonly demand: readonly DemandLine[];
  readonly settings: PlanSettings;
  /** The demand is that of a module's session. */
  readonly session?: AskedSession;
}

/** A call that can be answered, with what was found in its guides on the way. */
export interface Asked {
  readonly question: Question;
  readonly findings: readonly Diagnostic[];
  /** As its files have it. */
  readonly read: ReadWorkspace & { readonly workspace: Workspace };
}

/** What a call asks a plan for, its guides checked; or, everything said already, with what status it ends. */
export async function ask(call: Call, world: World): Promise<Asked | { readonly status: ExitStatus }> {
  const lines = call.words.map((word) => readDemand(word, call.values.batch));
  const found = findWorkspace(call, world, { takesWord: false });
  const today = todayOf(call, world);
  const faults: readonly Fault[] = [
    ...lines.filter(isFault),
    ...faultsOfSettings(call.values),
    ...('faults' in found ? found.faults : []),
    ...(typeof today === 'string' ? [] : [today]),
  ];
  if (faults.length > 0 || 'faults' in found || typeof today !== 'string')
    return { status: sayFaults(world, faults, call.command) };
  const demand = lines.flatMap((line) => (isFault(line) ? [] : [line]));
  return askIn(found.folder, demand, today, call, world);
}

async function askIn(
  folder: string,
  demand: readonly DemandLine[],
  today: IsoDate,
  call: Call,
  world: World,
): Promise<Asked | { readonly status: ExitStatus }> {
  const read = await readWorkspace(folder);
  const { workspace, unread } = read;
  const module = workspace && moduleNamed(demand, workspace.modules, unread);
  const faults = workspace ? faultsOf(module, demand, call, read, workspace) : [];
  if (faults.length > 0) return { status: sayFaults(world, faults, call.command) };
  const named = module === undefined ? demand.map(({ guide }) => guide) : guidesOf(module, workspace);
  const guides = [...new Set(named)];
  const findings = concerning(guides, check(read, { today, compared: guides }), workspace, module);
  if (!workspace || hasErrors(findings)) {
    const refused = module === undefined ? listed(guides) : module;
    sayFindings(findings, call, world, fill(outcomeWords.refused, { guides: refused }));
    return { status: 1 };
  }
  const stock = await stockOf(call.values, workspace, world);
  if ('fault' in stock) return { status: sayFaults(world, [stock.fault], call.command) };
  if ('refused' in stock) return { status: refuse([...findings, ...stock.refused], call, world) };
  const asked = inUnits(workspace, call.values.units);
  const settings = settingsOf(call.values, today, stock);
  const question =
    module === undefined
      ? { workspace: asked, demand, settings }
      : { workspace: asked, ...askedOfModule(workspace.modules[module]!, asked, call.values, settings) };
  return { question, findings, read: { ...read, workspace } };
}

/** As its program measures, unless the call says otherwise. */
function inUnits(workspace: Workspace, units = workspace.program.units): Workspace {
  return { ...workspace, program: { ...workspace.program, units } };
}

function faultsOf(
  module: string | undefined,
  demand: readonly DemandLine[],
  { values }: Call,
  { unread }: ReadWorkspace,
  workspace: Workspace,
): readonly Fault[] {
  const ofModule = faultsOfModule(module, demand, values, workspace);
  return module === undefined
    ? [...faultsOfDemand(demand, workspace.guides, unread, Object.keys(workspace.modules)), ...ofModule]
    : ofModule;
}

/** The guides whose models a module's stations use. */
function guidesOf(module: string, workspace: Workspace | undefined): readonly string[] {
  const known = workspace?.modules[module];
  return known ? guidesOfModule(known) : [];
}

export function refuse(findings: readonly Diagnostic[], call: Call, world: World): ExitStatus {
  sayFindings(findings, call, world);
  return 1;
}

/** On standard error, in the format of the call: text for people, else one JSON document. */
export function sayFindings(
  findings: readonly Diagnostic[],
  { values }: Call,
  world: World,
  then?: string,
): void {
  if (values.format === 'json') {
    if (findings.length > 0) world.err.write(jsonText(findingsJson(findings, showDiagnostic)));
    return;
  }
  world.err.write(findingsText(findings, inkFor(world.err, world)));
  if (then !== undefined) world.err.write(`${then}\n`);
}
