import type { InPieces } from '../../in-pieces.ts';
import { arrivalOf, arrivalsOf, datedDeliveries, type NeededBy, orderedAt } from '../buy/arrivals.ts';
import { type Bought, buy } from '../buy/buy.ts';
import { modelsFromStock } from '../buy/from-stock.ts';
import { planningSchedule } from '../schedule/plan-schedule.ts';
import { momentFact } from '../refusal.ts';
import type { NoSchedule, Plan, PlannedJob } from '../result.ts';
import type { ToSchedule } from '../schedule/schedule-runs.ts';
import { usesOf } from './uses.ts';
import type { Want } from '../buy/want.ts';

/** What is ordered, and the schedule that it comes in time for. */
export interface Ordered {
  readonly bought: Bought;
  readonly schedule: Plan['schedule'];
}

/** A plan before anything is ordered. */
export interface ToOrder extends Omit<ToSchedule, 'arrivals'> {
  readonly wants: readonly Want[];
}

/**
 * Forwards: what is cheapest is ordered at the start, and work begins as it arrives. Backwards: work is placed first,
 * and of each material only packs are bought that can still be there when it is first used.
 */
export function* ordering(work: ToOrder): InPieces<Ordered> {
  return yield* work.goal ? backwards(work) : forwards(work);
}

function* forwards(work: ToOrder): InPieces<Ordered> {
  const { wants, lines, workspace, clock } = work;
  const bought = buy(wants, workspace);
  const schedule = yield* planningSchedule({
    ...work,
    arrivals: arrivalsOf(bought, lines, workspace, clock),
  });
  return { bought: dated(bought, work), schedule };
}

function dated(bought: Bought, { workspace, clock }: ToOrder, neededBy?: NeededBy): Bought {
  return { ...bought, deliveries: datedDeliveries(bought, workspace, clock, neededBy) };
}

function* backwards(work: ToOrder): InPieces<Ordered> {
  const { wants, workspace } = work;
  const cheapest = buy(wants, workspace);
  const schedule = yield* planningSchedule({ ...work, arrivals: new Map() });
  if ('none' in schedule) return { bought: dated(cheapest, work), schedule };
  const neededBy = firstUses(cheapest, schedule.jobs, work);
  const inTime = wants.map((want) => onlyInTime(want, neededBy, work));
  const late = wants.find((_, i) => !inTime[i]!.buyFrom(inTime[i]!.offers));
  if (late) return { bought: dated(cheapest, work), schedule: { none: tooLate(late, neededBy, work) } };
  const bought = dated(buy(inTime, workspace), work, neededBy);
  const orders = bought.deliveries.flatMap(({ ordered }) => ordered ?? []);
  const start = Math.min(schedule.firstHandsOn, ...orders);
  return { bought, schedule: { ...schedule, start, leadTime: schedule.ready - start } };
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

function tooLate(want: Want, neededBy: NeededBy, work: ToOrder): NoSchedule {
  const arrives = Math.min(...want.offers.map(({ pack }) => earliest(want, pack, work) ?? Infinity));
  return {
    code: 'schedule-impossible',
    variant: 'delivery',
    facts: {
      material: want.material.name,
      needed: momentFact(neededBy.get(want.material.id)!),
      arrives: momentFact(arrives),
    },
    helps: [],
  };
}
