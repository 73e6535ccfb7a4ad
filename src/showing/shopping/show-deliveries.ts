import type { Pack } from '../../core/model/material.ts';
import type { Duration } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Delivery, Plan } from '../../core/plan/result.ts';
import { type Measure, compare, measure } from '../../core/quantity/quantity.ts';
import { planWords } from '../../words/plan.ts';
import { capital, fill } from '../text/fill.ts';
import { showMoney } from '../text/money.ts';
import { supplierName } from '../text/names.ts';
import { clockOf } from '../text/plan-clock.ts';
import { shown } from '../shown/shown.ts';
import type { ShownDelivery } from '../shown/shown-plan.ts';
import { showDuration, showMoment } from '../text/times.ts';

/** What each supplier brings, what the way costs, and when to order. */
export function showDeliveries(key: string, plan: Plan, workspace: Workspace): readonly ShownDelivery[] {
  return plan.deliveries.map((delivery, i) => showDelivery(`${key}[${i}]`, delivery, plan, workspace));
}

function showDelivery(key: string, delivery: Delivery, plan: Plan, workspace: Workspace): ShownDelivery {
  const { supplier, goods, charge } = delivery;
  const { program } = workspace;
  const name = supplier === undefined ? planWords.shopping.noSupplier : supplierName(supplier, program);
  return {
    ...(supplier === undefined ? {} : { supplier }),
    name: shown(`${key}.name`, capital(name)),
    goods: shown(`${key}.goods`, showMoney(goods, program, 'up')),
    charge: shown(
      `${key}.charge`,
      charge.n === 0n ? noChargeText(supplier) : showMoney(charge, program, 'up'),
    ),
    when: shown(`${key}.when`, whenText(delivery, plan, workspace)),
  };
}

/** What is free where a supplier brings it, and where nobody says who does. */
function noChargeText(supplier: string | undefined): string {
  return supplier === undefined ? planWords.none : planWords.shopping.noCharge;
}

/** With dates, when the order goes out and is there; without, how long before the start. Empty where nobody says. */
function whenText({ supplier, ordered, arrives }: Delivery, plan: Plan, workspace: Workspace): string {
  if (ordered !== undefined && arrives !== undefined && !('none' in plan.schedule)) {
    const clock = clockOf(plan.schedule, workspace);
    return fill(planWords.shopping.orderedThere, {
      ordered: showMoment(ordered, clock),
      arrives: showMoment(arrives, clock),
    });
  }
  const slowest = slowestArrival(supplier, plan, workspace);
  return slowest ? fill(planWords.shopping.order, { time: showDuration(slowest) }) : '';
}

/** How long the slowest of all packs takes; absent where nothing is bought, or nobody says. */
export function slowestOrder(plan: Plan, workspace: Workspace): Duration | undefined {
  return slowestOf(plan.deliveries.map(({ supplier }) => slowestArrival(supplier, plan, workspace)));
}

/** How long the slowest of the packs takes that are bought from a supplier. */
function slowestArrival(
  supplier: string | undefined,
  plan: Plan,
  workspace: Workspace,
): Duration | undefined {
  const packs = plan.purchases.flatMap(({ material, packs: bought }) =>
    bought.map(({ pack }) => workspace.materials[material]?.packs[pack]),
  );
  return slowestOf(
    packs
      .filter((pack): pack is Pack => pack !== undefined && pack.from === supplier)
      .map(({ arrivesIn }) => arrivesIn ?? workspace.program.suppliers[supplier ?? '']?.arrivesIn),
  );
}

function slowestOf(times: readonly (Duration | undefined)[]): Duration | undefined {
  return times
    .filter((time) => time !== undefined)
    .reduce<Duration | undefined>(
      (slowest, time) => (slowest && !isSlower(time, slowest) ? slowest : time),
      undefined,
    );
}

/** A working day counts as a day of the clock, and is the slower of the two. */
function isSlower(one: Duration, other: Duration): boolean {
  const difference = compare(inTime(one), inTime(other));
  return difference > 0 || (difference === 0 && 'workingDays' in one);
}

function inTime(duration: Duration): Measure {
  return 'workingDays' in duration
    ? measure({ value: String(duration.workingDays), unit: 'd' })
    : measure({ value: duration.seconds, unit: 's' });
}
