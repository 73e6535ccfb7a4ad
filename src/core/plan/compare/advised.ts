import { type InPieces, atOnce } from '../../in-pieces.ts';
import { cuttingBudget } from '../plan.ts';
import { readSettings } from '../demand/read-settings.ts';
import type { NoSchedule, Plan } from '../result.ts';
import { workingOut } from '../work.ts';
import { fasterPacks, mayComeFaster } from './faster-packs.ts';
import { helpsFor } from './helps.ts';
import type { Question } from './with-change.ts';

/**
 * The plan with what other plans, each of them tried, have to say of it: where it has no schedule, what would help;
 * where it waits for what is ordered, which packs would be there sooner.
 *
 * @param plan  The plan of that question.
 */
export function advised(question: Question, plan: Plan): Plan {
  return atOnce(advising(question, plan));
}

/** The same plan, in small pieces of work. */
export function* advising(question: Question, plan: Plan): InPieces<Plan> {
  const { schedule } = plan;
  if ('none' in schedule) return { ...plan, schedule: { none: yield* withHelps(schedule.none, question) } };
  if (!mayComeFaster(schedule)) return plan;
  const work = yield* workOf(question);
  if ('refused' in work) return plan;
  const faster = yield* fasterPacks(work, plan);
  return { ...plan, warnings: [...plan.warnings, ...faster] };
}

/** What would help, and the dates that it is told in. Nothing is tried for more runs than are ever scheduled. */
function* withHelps(none: NoSchedule, question: Question): InPieces<NoSchedule> {
  const set = readSettings(question.workspace.program, question.settings);
  if ('refused' in set) return none;
  const { kind, start } = set.clock;
  const dated = kind === 'dated' ? { ...none, clock: { clock: kind, start } } : none;
  if (none.code === 'too-many-runs') return dated;
  const work = yield* workOf(question);
  return 'refused' in work ? dated : { ...dated, helps: yield* helpsFor(none, work, question) };
}

function workOf({ workspace, demand, settings }: Question) {
  return workingOut(workspace, demand, settings, cuttingBudget);
}
