import type { Diagnostic } from '../../diagnostic.ts';
import type { InPieces } from '../../in-pieces.ts';
import { printMoney } from '../../money/money.ts';
import { exact } from '../../quantity/exact.ts';
import { arrivalOf, arrivalsOf, orderedAt } from '../buy/arrivals.ts';
import type { Want } from '../buy/want.ts';
import { outlayOf } from '../cost/outlay.ts';
import { ordering } from '../order/order.ts';
import { minutesFact, warning } from '../refusal.ts';
import type { Plan, PlannedSchedule } from '../result.ts';
import type { Work } from '../work.ts';

/** Each try is a schedule of its own: of so many materials, those that come last, and in plans of so many runs. */
const triesUpTo = 3;
const runsUpTo = 500;
const effortOfTry = exact('1/4');

/** Forwards, with dates: in the reference week all is at hand, and backwards what comes in time is bought. */
export function mayComeFaster({ clock, readyBy }: PlannedSchedule): boolean {
  return clock === 'dated' && readyBy === undefined;
}

/**
 * Price alone chooses the packs of a plan that runs forwards. Where another pack of some material would be there
 * sooner and all be ready earlier, that is said, with what it costs more. Each has been tried.
 */
export function* fasterPacks(work: Work, plan: Plan): InPieces<readonly Diagnostic[]> {
  const { wants, clock, runs } = work;
  const { schedule } = plan;
  if ('none' in schedule || !mayComeFaster(schedule) || runs.length > runsUpTo) return [];
  const arrivals = arrivalsOf(plan, work.lines, work.workspace, clock);
  const slowest = wants
    .map((want, index) => ({ want, index, at: arrivals.get(want.material.id)?.at ?? clock.start }))
    .map((slow) => ({ ...slow, faster: fasterThan(slow.at, slow.want, work) }))
    .filter(({ faster }) => faster.offers.length > 0 && faster.buyFrom(faster.offers) !== undefined)
    .sort((a, b) => b.at - a.at || a.index - b.index)
    .slice(0, triesUpTo);
  const found: Diagnostic[] = [];
  for (const { want, faster } of slowest) {
    const changed = wants.map((each) => (each === want ? faster : each));
    found.push(...(yield* gainOf(faster, { ...work, wants: changed }, plan)));
  }
  return found;
}

/** What all is ready earlier, with a faster pack; nothing where it is not. */
function* gainOf({ material }: Want, work: Work, plan: Plan): InPieces<readonly Diagnostic[]> {
  const { bought, schedule } = yield* ordering({ ...work, effort: effortOfTry });
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
