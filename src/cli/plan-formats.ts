import type { Workspace } from '../core/model/workspace.ts';
import type { CurvePoint, Plan } from '../core/plan/result.ts';
import { whatIf } from '../core/plan/compare/what-if.ts';
import { outlayCurve } from '../core/plan/compare/curve.ts';
import { curveJson, whatIfJson } from '../exports/change-json.ts';
import { dayListCsv } from '../exports/day-list-csv.ts';
import { jsonText } from '../exports/json-text.ts';
import { type CalendarEvent, planIcs } from '../exports/plan-ics.ts';
import { planFormat, planJson } from '../exports/plan-json.ts';
import { sessionJson } from '../exports/session-json.ts';
import { shoppingCsv } from '../exports/shopping-csv.ts';
import { timetableCsv } from '../exports/timetable-csv.ts';
import { planText } from '../showing/terminal/plan-text.ts';
import { sessionEvents } from '../showing/session/session-events.ts';
import { sessionText } from '../showing/session/session-text.ts';
import { showLives } from '../showing/session/show-lives.ts';
import { showSession } from '../showing/session/show-session.ts';
import { timetableOf } from '../showing/session/timetable.ts';
import { showCurve } from '../showing/compare/show-curve.ts';
import { showEvents } from '../showing/schedule/show-events.ts';
import { showPlan } from '../showing/plan/show-plan.ts';
import { showWhatIf } from '../showing/compare/show-what-if.ts';
import type { ShownPlan } from '../showing/shown/shown-plan.ts';
import { workOfEach } from '../showing/schedule/work-of-each.ts';
import { outcomeWords } from '../words/outcomes.ts';
import { sessionWords } from '../words/session.ts';
import type { Values } from './options.ts';
import type { Question } from './question.ts';
import type { Progress } from './progress.ts';
import type { AskedSession } from './session.ts';
import type { World } from './world.ts';

/** A plan that is to be printed, and what it answers. */
interface ToPrint {
  readonly plan: Plan;
  readonly question: Question;
  readonly values: Values;
  readonly progress: Progress;
  readonly world: World;
}

/** `undefined` where the format needs a schedule, and there is none. */
type Printer = (work: ToPrint) => string | undefined;

const printers: Readonly<Record<NonNullable<Values['format']>, Printer>> = {
  text: textOf,
  json: jsonOf,
  csv: (work) => (work.values.list === 'days' ? daysOf(work) : shoppingOf(work)),
  ics: calendarOf,
};

/** A plan in the format of the call. */
export function printPlan(plan: Plan, question: Question, values: Values, progress: Progress, world: World) {
  return printers[values.format ?? 'text']({ plan, question, values, progress, world });
}

/** A session without a plan, in the format of the call; `undefined` where that speaks of models alone. */
export function printSession(session: AskedSession, question: Question, values: Values, world: World) {
  const { workspace, settings } = question;
  const { format = 'text', list, group } = values;
  if (format === 'text')
    return `${textOfSession(session, workspace, widthOf(world))}\n${sessionWords.noModels}\n`;
  if (format === 'json') return jsonText({ format: planFormat, session: jsonOfSession(session, workspace) });
  if (format === 'ics')
    return planIcs(eventsOfSession(session, workspace, group), workspace.program, settings.today);
  return list === 'timetable' ? timetableOfSession(session, workspace) : undefined;
}

function textOfSession(
  { module, cohort, time }: AskedSession,
  workspace: Workspace,
  width: number,
  plan?: ShownPlan,
): string {
  const session = showSession(module, cohort, workspace, time);
  return sessionText(session, width, showLives('lives', cohort, workspace, plan));
}

function jsonOfSession({ module, cohort, time }: AskedSession, { program }: Workspace) {
  return sessionJson(module, cohort, program, time.begins);
}

function eventsOfSession(
  { module, cohort, time: { begins } }: AskedSession,
  workspace: Workspace,
  group?: number,
): readonly CalendarEvent[] {
  return begins === undefined ? [] : sessionEvents(module, cohort, workspace, begins, group);
}

function timetableOfSession({ module, cohort, time }: AskedSession, workspace: Workspace): string {
  const begins = time.begins === undefined ? undefined : { at: time.begins, zone: workspace.program.zone };
  return timetableCsv(timetableOf(module, cohort, workspace), begins);
}

/** Above so many runs changes are tried only where they are asked for. */
const triedUpTo = 300;

/** As wide as the terminal, within what reads well; 80 columns on a pipe, so that the bytes do not depend on it. */
function widthOf({ out: { isTerminal, columns } }: World): number {
  return isTerminal && columns ? Math.min(Math.max(columns, 60), 100) : 80;
}

/** The plan, and of a module its session before it. */
function textOf(work: ToPrint): string {
  const { plan, question, world } = work;
  const { workspace, session } = question;
  const width = widthOf(world);
  const changes = isQuick(plan) || work.values['what-if'] ? changesOf(work) : [];
  const sizes = work.values['what-if'] ? sizesOf(work) : [];
  const shown = showPlan(plan, workspace);
  const text = planText(shown, width, {
    ...(changes.length > 0 ? { whatIf: showWhatIf(changes, plan, workspace) } : {}),
    ...(sizes.length > 0 ? { curve: showCurve(sizes, plan, workspace) } : {}),
  });
  return session ? `${textOfSession(session, workspace, width, shown)}\n${text}` : text;
}

function isQuick({ schedule }: Plan): boolean {
  return !('none' in schedule) && schedule.jobs.length <= triedUpTo;
}

function jsonOf(work: ToPrint): string {
  const { plan, question, values } = work;
  const { workspace, session } = question;
  const { program } = workspace;
  const ofModule = session && { session: jsonOfSession(session, workspace) };
  const beside = values['what-if'] && {
    whatIf: whatIfJson(changesOf(work), plan, program),
    curve: curveJson(sizesOf(work), program),
  };
  return jsonText({ ...planJson(plan, workspace), ...ofModule, ...beside });
}

/** What single changes would bring. */
function changesOf({ plan, question, progress }: ToPrint) {
  progress.say(outcomeWords.trying);
  return whatIf(question.workspace, question.demand, question.settings, plan);
}

/** What each model costs at other sizes of the batch: of a plan for one guide alone. */
function sizesOf({ plan, question, progress }: ToPrint): readonly CurvePoint[] {
  progress.say(outcomeWords.trying);
  const [line, ...others] = question.demand;
  if (!line || others.length > 0 || plan.lines[0]!.made === 0) return [];
  return outlayCurve(question.workspace, line, question.settings);
}

function shoppingOf({ plan, question }: ToPrint): string {
  return shoppingCsv(plan, question.workspace);
}

function daysOf({ plan, question }: ToPrint): string | undefined {
  const { schedule } = plan;
  if ('none' in schedule) return undefined;
  return dayListCsv(workOfEach(plan, schedule), schedule, question.workspace.program.zone);
}

function calendarOf({ plan, question }: ToPrint): string | undefined {
  const { workspace, settings, session } = question;
  if ('none' in plan.schedule) return undefined;
  const events = [
    ...showEvents(plan, plan.schedule, workspace),
    ...(session ? eventsOfSession(session, workspace) : []),
  ];
  return planIcs(events, workspace.program, settings.today);
}
