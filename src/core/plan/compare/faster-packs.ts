import type { Diagnostic } from '../../diagnostic.ts';
import { printMoney } from '../../money/money.ts';
import { exact } from '../../quantity/exact.ts';
import { arrivalOf, arrivalsOf, orderedAt } from '../buy/arrivals.ts';
import type { Want } from '../buy/want.ts';
import { outlayOf } from '../cost/outlay.ts';
import { orderAndSchedule } from '../order/order.ts';
import { minutesFact, warning } from '../refusal.ts';
import type { Plan } from '../result.ts';
import type { Work } from '../work.ts';

/** Each try is a schedule of its own: of so many materials, those that come last, and in plans of so many runs. */
const triesUpTo = 3;
const runsUpTo = 500;
const effortOfTry = exact('1/4');

/**
 * Price alone chooses the packs of a plan that runs forwards. Where another pack of some material would be there
 * sooner and all be ready earlier, that is said, with what it costs more. Each has been tried.
 */
export function fasterPacks(work: Work, plan: Plan): Diagnostic[] {
  const { wants, goal, clock, runs } = work;
  if (goal || clock.kind !== 'dated' || 'none' in plan.schedule || runs.length > runsUpTo) return [];
  const arrivals = arrivalsOf(plan, work.lines, work.workspace, clock);
  return wants
    .map((want, index) => ({ want, index, at: arrivals.get(want.material.id)?.at ?? clock.start }))
    .map((slow) => ({ ...slow, faster: fasterThan(slow.at, slow.want, work) }))
    .filter(({ faster }) => faster.offers.length > 0 && faster.buyFrom(faster.offers) !== undefined)
    .sort((a, b) => b.at - a.at || a.index - b.index)
    .slice(0, triesUpTo)
    .flatMap(({ want, faster }) =>
      gainOf(faster, { ...work, wants: wants.map((each) => (each === want ? faster : each)) }, plan),
    );
}

/** What all is ready earlier, with a faster pack; nothing where it is not. */
function gainOf({ material }: Want, work: Work, plan: Plan): Diagnostic[] {
  const { bought, schedule } = orderAndSchedule({ ...work, effort: effortOfTry });
  if ('none' in schedule || 'none' in plan.schedule || schedule.ready >= plan.schedule.ready) return [];
  const { currency, minorDigits } = work.workspace.program;
  const more = outlayOf(bought).sub(outlayOf(plan));
  return [
    warning('faster-pack', {
      material: material.name,
      earlier: minutesFact(plan.schedule.ready - schedule.ready),
      cost: `${printMoney(more, minorDigits[currency] ?? 2)} ${currency}`,
    }),
  ];
}

/** With those packs alone that are there before a minute. */
function fasterThan(minute: number, want: Want, { workspace, clock }: Work): Want {
  const ordered = orderedAt(workspace.program, clock.start);
  const isFaster = (pack: number): boolean =>
    (arrivalOf(workspace, want.material.id, pack, ordered) ?? minute) < minute;
  return { ...want, offers: want.offers.filter(({ pack }) => isFaster(pack)) };
}
