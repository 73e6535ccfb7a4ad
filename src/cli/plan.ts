import { makePlan } from '../index.ts';
import type { Diagnostic } from '../core/diagnostic.ts';
import type { Workspace } from '../core/model/workspace.ts';
import { advised } from '../core/plan/compare/advised.ts';
import { momentOf } from '../core/plan/time/moment.ts';
import type { Plan } from '../core/plan/result.ts';
import { showSchedule } from '../showing/schedule/show-schedule.ts';
import { wrapped } from '../showing/text/wrapped.ts';
import { outcomeWords } from '../words/outcomes.ts';
import { sessionWords } from '../words/session.ts';
import type { Call } from './arguments.ts';
import type { Command } from './command.ts';
import { printPlan, printSession } from './plan-formats.ts';
import { progressOn } from './progress.ts';
import { ask, type Asked, type Question, refuse, sayFindings } from './question.ts';
import type { AskedSession } from './session.ts';
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
    'group',
    'instructors',
    'list',
    'margin',
    'people',
    'ready-by',
    'spares',
    'start',
    'stock',
    'today',
    'units',
    'what-if',
    'workspace',
  ],
  run: async (call, world) => {
    const asked = await ask(call, world);
    return 'status' in asked ? asked.status : answer(asked, call, world);
  },
};

function answer({ question, findings }: Asked, call: Call, world: World): ExitStatus {
  if (question.session && isAlone(question, call))
    return answerAlone(question.session, { question, findings }, call, world);
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

/** A session without models, its timetable or the calendar of a group: there is nothing to plan. */
function isAlone({ demand }: Question, { values: { list, group } }: Call): boolean {
  return demand.length === 0 || list === 'timetable' || group !== undefined;
}

/** Who is where is told; or, as of a plan, that its session cannot begin then. */
function answerAlone(
  session: AskedSession,
  { question, findings }: Pick<Asked, 'question' | 'findings'>,
  call: Call,
  world: World,
): ExitStatus {
  const untimely = untimelyStart(question);
  if (untimely) return refuse([...findings, untimely], call, world);
  sayFindings(findings, call, world);
  const text = printSession(session, question, call.values, world);
  (text === undefined ? world.err : world.out).write(text ?? `${sessionWords.noModels}\n`);
  return text === undefined ? 3 : 0;
}

/** Why a session cannot begin when the call says, if it says so and it cannot. */
function untimelyStart({ settings, workspace }: Question): Diagnostic | undefined {
  const { readyBy: time, today } = settings;
  if (time === undefined) return undefined;
  const begins = momentOf({ option: '--ready-by', time }, today, workspace.program);
  return typeof begins === 'number' ? undefined : begins;
}

/** Why there is no work to put into days, and what would help. */
export function sayNoSchedule(made: Plan, workspace: Workspace, world: World): ExitStatus {
  const { none, helps } = showSchedule('schedule', made, workspace);
  for (const { text } of [none, ...helps]) for (const line of wrapped(text, 80)) world.err.write(`${line}\n`);
  return 3;
}

/** What to buy is still known; but the work cannot be done as asked, or no way was found. */
export function isImpossible({ schedule }: Plan): boolean {
  return 'none' in schedule && schedule.none.code !== 'too-many-runs';
}
