import type { Diagnostic } from '../../diagnostic.ts';
import { printMoney } from '../../money/money.ts';
import { exact } from '../../quantity/exact.ts';
import { arrivalOf, arrivalsOf, orderedAt } from '../buy/arrivals.ts';
import { buy } from '../buy/buy.ts';
import type { Ordered, ToOrder } from './order.ts';
import { outlayOf } from '../cost/outlay.ts';
import { planSchedule } from '../schedule/plan-schedule.ts';
import { minutesFact, warning } from '../refusal.ts';
import type { Want } from '../buy/want.ts';

/** Each try is a schedule of its own: of so many materials, those that come last, and in plans of so many runs. */
const triesUpTo = 3;
const runsUpTo = 500;
const effortOfTry = exact('1/4');

/**
 * Price alone chooses the packs of a plan that runs forwards. Where another pack of some material would be there
 * sooner and all be ready earlier, that is said, with what it costs more. Each has been tried.
 */
export function fasterPacks(
  wants: readonly Want[],
  work: ToOrder,
  { bought, schedule }: Ordered,
): Diagnostic[] {
  if (work.goal || work.clock.kind !== 'dated' || 'none' in schedule || work.runs.length > runsUpTo)
    return [];
  const { lines, workspace, clock } = work;
  const arrivals = arrivalsOf(bought, lines, workspace, clock);
  const slow = wants
    .map((want, index) => ({ index, at: arrivals.get(want.material.id)?.at ?? clock.start }))
    .map(({ index, at }) => ({ index, at, faster: fasterThan(at, wants[index]!, work) }))
    .filter(({ faster }) => faster.buyFrom(faster.offers) !== undefined && faster.offers.length > 0);
  return slow
    .sort((a, b) => b.at - a.at || a.index - b.index)
    .slice(0, triesUpTo)
    .flatMap(({ index, faster }) => {
      const other = buy(
        wants.map((want, i) => (i === index ? faster : want)),
        workspace,
      );
      const tried = planSchedule({
        ...work,
        effort: effortOfTry,
        arrivals: arrivalsOf(other, lines, workspace, clock),
      });
      if ('none' in tried || tried.ready >= schedule.ready) return [];
      const more = outlayOf(other).sub(outlayOf(bought));
      const { currency, minorDigits } = workspace.program;
      return [
        warning('faster-pack', {
          material: faster.material.name,
          earlier: minutesFact(schedule.ready - tried.ready),
          cost: `${printMoney(more, minorDigits[currency] ?? 2)} ${currency}`,
        }),
      ];
    });
}

/** With those packs alone that are there before a minute. */
function fasterThan(minute: number, want: Want, { workspace, clock }: ToOrder): Want {
  const ordered = orderedAt(workspace.program, clock.start);
  const isFaster = (pack: number): boolean =>
    (arrivalOf(workspace, want.material.id, pack, ordered) ?? minute) < minute;
  return { ...want, offers: want.offers.filter(({ pack }) => isFaster(pack)) };
}
