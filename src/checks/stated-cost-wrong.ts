import { inCurrency } from '../core/money/money.ts';
import { exact } from '../core/quantity/exact.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideRead } from './lookup/context.ts';
import { moneyText, written } from './lookup/written.ts';

/** How far a stated figure may be off: a tenth. */
const [low, high] = [exact('9/10'), exact('11/10')];

/** A used cost per model that the computation does not bear out, by more than a tenth. */
export const statedCostWrong: Check = {
  code: 'stated-cost-wrong',
  gravity: 'incomplete',
  needsPlan: true,
  find: (context) => context.guides.flatMap((read) => ofGuide(read, context)),
};

function ofGuide(
  { guide, place }: GuideRead,
  { workspace: { program }, planOf }: Context,
): readonly Finding[] {
  const stated = guide.states?.usedEach;
  const cost = planOf(guide)?.cost;
  if (!stated || !cost?.complete) return [];
  const [least, most] = [inCurrency(stated.least, program), inCurrency(stated.most, program)];
  const used = cost.each[0]!.used;
  if (!least || !most || (used.gte(least.mul(low)) && used.lte(most.mul(high)))) return [];
  const at = place('states', 'used-each');
  const computed = moneyText(used, program);
  return [
    {
      places: [at],
      facts: { guide: guide.title, stated: written(at), computed, models: String(guide.states!.for) },
    },
  ];
}
