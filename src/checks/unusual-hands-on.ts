import { exact } from '../core/quantity/exact.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { timeText } from './lookup/written.ts';

/**
 * Minutes of hands-on for one published model: one for perineal repair, and the slowest of six home-made blocks.
 *
 * @source Schmitt et al. 2023 (about 5 min); “A comparison of homemade vascular access ultrasound phantom models for
 *   peripheral intravenous catheter insertion”, abstract (10 to 120 min).
 */
const published = { least: 5, most: 120 };

/** Hands-on time for a model outside what published models show. */
export const unusualHandsOn: Check = {
  code: 'unusual-hands-on',
  gravity: 'note',
  needsPlan: true,
  find: (context) => context.guides.flatMap((read) => ofGuide(read, context)),
};

function ofGuide({ guide, place }: GuideRead, { planOf }: Context): readonly Finding[] {
  const plan = planOf(guide);
  if (!plan || !guide.states) return [];
  const each = exact(plan.cost.handsOn).div(guide.states.for);
  if (each.gte(published.least) && each.lte(published.most)) return [];
  const shown = timeText(Number(each.round(0).n));
  const facts = { guide: guide.title, each: shown, models: String(guide.states.for) };
  return [{ variant: each.lt(published.least) ? 'low' : 'high', places: [place('states')], facts }];
}
