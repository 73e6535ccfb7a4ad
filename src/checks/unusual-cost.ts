import { inCurrency } from '../core/money/money.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { moneyText } from './lookup/written.ts';

/**
 * What materials of published models for practice come to: a sewing pad of leather and sponge, and the dearest of six
 * home-made blocks.
 *
 * @source Khantasa-Ard, Cureus 2024;16:e71182 (0.41 USD); “A comparison of homemade vascular access ultrasound phantom
 *   models for peripheral intravenous catheter insertion”, abstract (4.39 to 29.76 USD).
 */
const published = {
  least: { amount: '0.41', currency: 'USD' },
  most: { amount: '29.76', currency: 'USD' },
} as const;

/** A cost per model outside what published models show. Told where the program has a rate for their currency. */
export const unusualCost: Check = {
  code: 'unusual-cost',
  gravity: 'note',
  needsPlan: true,
  find: (context) => context.guides.flatMap((read) => ofGuide(read, context)),
};

function ofGuide(
  { guide, place }: GuideRead,
  { workspace: { program }, planOf }: Context,
): readonly Finding[] {
  const cost = planOf(guide)?.cost;
  const [least, most] = [inCurrency(published.least, program), inCurrency(published.most, program)];
  if (!cost?.complete || !least || !most) return [];
  const { used } = cost.each[0]!;
  if (used.gte(least) && used.lte(most)) return [];
  const shown = moneyText(used, program);
  const facts = { guide: guide.title, used: shown, least: '0.41 USD', most: '29.76 USD' };
  return [{ variant: used.lt(least) ? 'low' : 'high', places: [place('states')], facts }];
}
