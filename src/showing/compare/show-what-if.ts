import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, WhatIf } from '../../core/plan/result.ts';
import { whatIfWords as words } from '../../words/what-if.ts';
import { changeText } from './change-text.ts';
import { fill } from '../text/fill.ts';
import { showMoney } from '../text/money.ts';
import { planClock } from '../text/plan-clock.ts';
import type { ShownWhatIf } from '../shown/shown-what-if.ts';
import { shown } from '../shown/shown.ts';
import { type Clock, showMoment, showMomentFrom } from '../text/times.ts';

/**
 * What single changes would bring, beside the plan as it is: when all is ready (of a plan made backwards, when to
 * begin), and what more there is to buy.
 */
export function showWhatIf(rows: readonly WhatIf[], plan: Plan, workspace: Workspace): ShownWhatIf {
  const clock = planClock(plan, workspace);
  return {
    rows: rows.map((row, i) => ({
      change: shown(`whatIf[${i}].change`, changeText(row.change, plan, workspace)),
      brings: shown(`whatIf[${i}].brings`, bringsText(row, plan, clock)),
      costs: shown(`whatIf[${i}].costs`, costsText(row, plan, workspace)),
      isIdle: isIdle(row, plan),
    })),
  };
}

function isIdle(row: WhatIf, plan: Plan): boolean {
  const { then, now } = compared(row, plan);
  return then !== undefined && then === now;
}

function bringsText(row: WhatIf, plan: Plan, clock: Clock): string {
  const { backwards, then, now } = compared(row, plan);
  if (then === undefined) return words.brings.none;
  if (now === then) return backwards ? words.brings.sameBegins : words.brings.sameReady;
  const text = fill(backwards ? words.brings.begins : words.brings.ready, { time: showMoment(then, clock) });
  return now === undefined
    ? text
    : fill(words.brings.instead, { then: text, now: showMomentFrom(then, now, clock) });
}

/** When all is ready with the change and without; planned backwards, when work begins. */
function compared({ ready, firstHandsOn }: WhatIf, { schedule }: Plan) {
  const known = 'none' in schedule ? undefined : schedule;
  const backwards = known?.readyBy !== undefined;
  const [then, now] = backwards ? [firstHandsOn, known?.firstHandsOn] : [ready, known?.ready];
  return { backwards, then, now };
}

/** Materials, deliveries, and a tool or place that is bought for it. */
function costsText({ cashToStart }: WhatIf, { cost }: Plan, { program }: Workspace): string {
  const difference = cashToStart.sub(cost.cashToStart);
  if (difference.equals(0)) return words.costs.same;
  const amount = showMoney(difference.abs(), program, 'up');
  return fill(difference.compare(0) > 0 ? words.costs.more : words.costs.less, { amount });
}
