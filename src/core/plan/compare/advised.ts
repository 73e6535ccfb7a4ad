import { type InPieces, atOnce } from '../../in-pieces.ts';
import { cuttingBudget } from '../plan.ts';
import type { Plan } from '../result.ts';
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
  const { workspace, demand, settings } = question;
  const { schedule } = plan;
  if (!('none' in schedule) && !mayComeFaster(schedule)) return plan;
  const work = yield* workingOut(workspace, demand, settings, cuttingBudget);
  if ('refused' in work) return plan;
  if (!('none' in schedule)) {
    const faster = yield* fasterPacks(work, plan);
    return { ...plan, warnings: [...plan.warnings, ...faster] };
  }
  const { kind, start } = work.clock;
  const dated = kind === 'dated' ? { clock: { clock: kind, start } } : {};
  const none = { ...schedule.none, ...dated, helps: yield* helpsFor(schedule.none, work, question) };
  return { ...plan, schedule: { none } };
}
