import { arrivalOf, arrivalsOf, datedDeliveries, type NeededBy, orderedAt } from '../buy/arrivals.ts';
import { type Bought, buy } from '../buy/buy.ts';
import { modelsFromStock } from '../buy/from-stock.ts';
import { planSchedule } from '../schedule/plan-schedule.ts';
import { momentFact } from '../refusal.ts';
import type { Help, NoSchedule, Plan, PlannedJob } from '../result.ts';
import { type ToSchedule, schedulesOfTry } from '../schedule/schedule-runs.ts';
import { usesOf } from './uses.ts';
import type { Want } from '../buy/want.ts';

/** What is ordered, and the schedule that it comes in time for. */
export interface Ordered {
  readonly bought: Bought;
  readonly schedule: Plan['schedule'];
}

/** A plan before anything is ordered. */
export type ToOrder = Omit<ToSchedule, 'arrivals'>;

/**
 * Forwards: what is cheapest is ordered at the start, and work begins as it arrives. Backwards: work is placed first,
 * and of each material only packs are bought that can still be there when it is first used.
 */
export function orderAndSchedule(wants: readonly Want[], work: ToOrder): Ordered {
  return work.goal ? backwards(wants, work) : forwards(wants, work);
}

function forwards(wants: readonly Want[], work: ToOrder): Ordered {
  const { lines, workspace, clock } = work;
  const bought = buy(wants, workspace);
  const schedule = planSchedule({ ...work, arrivals: arrivalsOf(bought, lines, workspace, clock) });
  return { bought: dated(bought, work), schedule };
}

function dated(bought: Bought, { workspace, clock }: ToOrder, neededBy?: NeededBy): Bought {
  return { ...bought, deliveries: datedDeliveries(bought, workspace, clock, neededBy) };
}

function backwards(wants: readonly Want[], work: ToOrder): Ordered {
  const { schedule, neededBy, inTime, late } = inTimeFor(wants, work);
  if ('none' in schedule) return { bought: dated(buy(wants, work.workspace), work), schedule };
  if (late) {
    const none = tooLate(late, neededBy, wants, work);
    return { bought: dated(buy(wants, work.workspace), work), schedule: { none } };
  }
  const bought = dated(buy(inTime, work.workspace), work, neededBy);
  const orders = bought.deliveries.flatMap(({ ordered }) => ordered ?? []);
  const start = Math.min(schedule.firstHandsOn, ...orders);
  return { bought, schedule: { ...schedule, start, leadTime: schedule.ready - start } };
}

/** The work as late as it can be, and what can still be bought for it. */
function inTimeFor(wants: readonly Want[], work: ToOrder) {
  const bought = buy(wants, work.workspace);
  const judged = (jobs: readonly PlannedJob[]) => {
    const neededBy = firstUses(bought, jobs, work);
    const inTime = wants.map((want) => onlyInTime(want, neededBy, work));
    return { neededBy, inTime, late: wants.find((_, i) => !inTime[i]!.buyFrom(inTime[i]!.offers)) };
  };
  const isInTime = (jobs: readonly PlannedJob[]): boolean => judged(jobs).late === undefined;
  const schedule = planSchedule({ ...work, arrivals: new Map(), isInTime });
  return { schedule, ...judged('none' in schedule ? [] : schedule.jobs) };
}

/** When the first model is worked on for which the stock on hand of a material is not enough. */
function firstUses(
  { purchases, cutting }: Bought,
  jobs: readonly PlannedJob[],
  { lines, workspace }: ToOrder,
): NeededBy {
  const uses = usesOf(jobs, lines, workspace);
  const first = purchases.flatMap((purchase): [string, number][] => {
    const { material, packs } = purchase;
    if (packs.length === 0) return [];
    const cut = cutting.find((plan) => plan.material === material);
    const ready = modelsFromStock(purchase, cut, lines, workspace);
    const waiting = (uses.get(material) ?? []).filter(({ line, models }) => models.at(-1)! > ready[line]!);
    return waiting.length > 0 ? [[material, Math.min(...waiting.map(({ start }) => start))]] : [];
  });
  return new Map(first);
}

/** With only those packs that are there when they are needed if they are ordered today. */
function onlyInTime(want: Want, neededBy: NeededBy, work: ToOrder): Want {
  const last = neededBy.get(want.material.id) ?? Infinity;
  return { ...want, offers: want.offers.filter(({ pack }) => (earliest(want, pack, work) ?? 0) <= last) };
}

function earliest({ material }: Want, pack: number, { workspace, clock }: ToOrder): number | undefined {
  return arrivalOf(workspace, material.id, pack, orderedAt(workspace.program, clock.start));
}

function tooLate(want: Want, neededBy: NeededBy, wants: readonly Want[], work: ToOrder): NoSchedule {
  const { clock } = work;
  const arrives = Math.min(...want.offers.map(({ pack }) => earliest(want, pack, work) ?? Infinity));
  return {
    code: 'schedule-impossible',
    variant: 'delivery',
    facts: {
      material: want.material.name,
      needed: momentFact(neededBy.get(want.material.id)!),
      arrives: momentFact(arrives),
    },
    helps: laterEnd(wants, work),
    clock: { clock: clock.kind, start: clock.start },
  };
}

/** So many days later all may be ready, as far as that is tried. */
const daysLater = [1, 2, 3, 5, 7, 10, 14, 21, 28];

/** The least of these with which everything comes in time. */
function laterEnd(wants: readonly Want[], work: ToOrder): readonly Help[] {
  const { readyBy, goodUntil } = work.goal!;
  for (const minutes of daysLater.map((days) => days * 1440)) {
    const goal = { readyBy: readyBy + minutes, goodUntil: goodUntil + minutes };
    const { schedule, late } = inTimeFor(wants, { ...work, goal, schedules: schedulesOfTry });
    if (!('none' in schedule) && !late)
      return [{ change: { kind: 'later', minutes }, ready: schedule.ready }];
  }
  return [];
}
