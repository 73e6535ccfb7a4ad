import { cuttingBudget } from '../plan.ts';
import type { Plan } from '../result.ts';
import { workFor } from '../work.ts';
import { fasterPacks } from './faster-packs.ts';
import { helpsFor } from './helps.ts';
import type { Question } from './with-change.ts';

/**
 * The plan with what other plans, each of them tried, have to say of it: where it has no schedule, what would help;
 * where it waits for what is ordered, which packs would be there sooner.
 *
 * @param plan  The plan of that question.
 */
export function advised(question: Question, plan: Plan): Plan {
  const { workspace, demand, settings } = question;
  const { schedule } = plan;
  const work = workFor(workspace, demand, settings, cuttingBudget);
  if ('refused' in work) return plan;
  if (!('none' in schedule)) return { ...plan, warnings: [...plan.warnings, ...fasterPacks(work, plan)] };
  const { kind, start } = work.clock;
  const dated = kind === 'dated' ? { clock: { clock: kind, start } } : {};
  const none = { ...schedule.none, ...dated, helps: helpsFor(schedule.none, work, question) };
  return { ...plan, schedule: { none } };
}
