import { check, makePlan, readWorkspace } from '../index.ts';
import type { Diagnostic } from '../core/diagnostic.ts';
import type { IsoDate } from '../core/model/values.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { DemandLine, PlanSettings } from '../core/plan/demand.ts';
import { advised } from '../core/plan/compare/advised.ts';
import type { Plan } from '../core/plan/result.ts';
import { findingsJson } from '../exports/findings-json.ts';
import { jsonText } from '../exports/json-text.ts';
import { showDiagnostic } from '../showing/diagnostic.ts';
import { fill, listed } from '../showing/fill.ts';
import { showSchedule } from '../showing/show-schedule.ts';
import { wrapped } from '../showing/wrapped.ts';
import { outcomeWords } from '../words/command-line.ts';
import type { Call } from './arguments.ts';
import type { Command } from './command.ts';
import { concerning } from './concerning.ts';
import { faultsOfDemand, isFault, readDemand } from './demand.ts';
import { sayFaults } from './fault.ts';
import { findingsText, hasErrors } from './findings.ts';
import { findWorkspace } from './folder.ts';
import { inkFor } from './ink.ts';
import { printPlan } from './plan-formats.ts';
import { faultsOfSettings, settingsOf } from './plan-settings.ts';
import { progressOn } from './progress.ts';
import { stockOf } from './stock.ts';
import { todayOf } from './today.ts';
import type { ExitStatus, World } from './world.ts';

/** What to buy, what it costs, who does what when. The plan goes to standard output, findings to standard error. */
export const plan: Command = {
  name: 'plan',
  options: [
    'batch',
    'builders',
    'effort',
    'format',
    'good-until',
    'list',
    'margin',
    'ready-by',
    'spares',
    'start',
    'stock',
    'today',
    'what-if',
    'workspace',
  ],
  run: async (call, world) => {
    const lines = call.words.map((word) => readDemand(word, call.values.batch));
    const found = findWorkspace(call, world, { takesWord: false, command: 'plan' });
    const today = todayOf(call, world);
    const faults = [
      ...lines.filter(isFault),
      ...faultsOfSettings(call.values),
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
  if (!workspace || hasErrors(findings)) {
    sayFindings(findings, call, world, fill(outcomeWords.refused, { guides: listed(guides) }));
    return 1;
  }
  const stock = await stockOf(call.values, workspace, world);
  if ('fault' in stock) return sayFaults(world, [stock.fault], 'plan');
  if ('refused' in stock) return refuse([...findings, ...stock.refused], call, world);
  return answer(
    { workspace, demand, settings: settingsOf(call.values, today, stock) },
    findings,
    call,
    world,
  );
}

/** What a plan is asked for. */
export interface Question {
  readonly workspace: Workspace;
  readonly demand: readonly DemandLine[];
  readonly settings: PlanSettings;
}

function answer(question: Question, findings: readonly Diagnostic[], call: Call, world: World): ExitStatus {
  const progress = progressOn(world);
  progress.say(outcomeWords.planning);
  const made = makePlan(question.workspace, question.demand, question.settings);
  if ('refused' in made) {
    progress.done();
    return refuse([...findings, ...made.refused], call, world);
  }
  const plan = advised(question, made);
  const text = printPlan(plan, question, call.values, progress, world);
  progress.done();
  sayFindings(findings, call, world);
  if (text === undefined) return sayNoSchedule(plan, question.workspace, world);
  world.out.write(text);
  return isImpossible(plan) ? 3 : 0;
}

function refuse(findings: readonly Diagnostic[], call: Call, world: World): ExitStatus {
  sayFindings(findings, call, world);
  return 1;
}

/** On standard error, in the format of the call: text for people, else one JSON document. */
function sayFindings(findings: readonly Diagnostic[], { values }: Call, world: World, then?: string): void {
  if (values.format === 'json') {
    if (findings.length > 0) world.err.write(jsonText(findingsJson(findings, showDiagnostic)));
    return;
  }
  world.err.write(findingsText(findings, inkFor(world.err, world)));
  if (then !== undefined) world.err.write(`${then}\n`);
}

/** Days or a calendar were asked for, and there is no work to put in them. */
function sayNoSchedule(made: Plan, workspace: Workspace, world: World): ExitStatus {
  const { none, helps } = showSchedule('schedule', made, workspace);
  for (const { text } of [none, ...helps]) for (const line of wrapped(text, 80)) world.err.write(`${line}\n`);
  return 3;
}

/** What to buy is still known; but the work cannot be done as asked, or no way was found. */
function isImpossible({ schedule }: Plan): boolean {
  return 'none' in schedule && schedule.none.code !== 'too-many-runs';
}
