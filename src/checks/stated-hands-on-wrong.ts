import { exact } from '../core/quantity/exact.ts';
import { secondsOf } from '../core/time/minutes.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { timeText, written } from './lookup/written.ts';

/** Hands-on time of all models together that the computation does not bear out, by more than a tenth. */
export const statedHandsOnWrong: Check = {
  code: 'stated-hands-on-wrong',
  gravity: 'incomplete',
  needsPlan: true,
  find: (context) => context.guides.flatMap((read) => ofGuide(read, context)),
};

function ofGuide({ guide, place }: GuideRead, { planOf }: Context): readonly Finding[] {
  const stated = guide.states?.handsOn;
  const plan = planOf(guide);
  if (!stated || !plan) return [];
  const computed = exact(plan.cost.handsOn);
  const off = secondsOf(stated).div(60).sub(computed).abs();
  if (off.lte(computed.div(10))) return [];
  const at = place('states', 'hands-on');
  const facts = { guide: guide.title, stated: written(at), computed: timeText(plan.cost.handsOn) };
  return [{ places: [at], facts: { ...facts, models: String(guide.states!.for) } }];
}
