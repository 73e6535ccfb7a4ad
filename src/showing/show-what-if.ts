import type { Workspace } from '../core/model/workspace.ts';
import type { Plan, WhatIf } from '../core/plan/result.ts';
import { whatIfWords as words } from '../words/what-if.ts';
import { changeText } from './change-text.ts';
import { fill } from './fill.ts';
import { showMoney } from './money.ts';
import { planClock } from './plan-clock.ts';
import type { ShownWhatIf } from './shown-what-if.ts';
import { shown } from './shown.ts';
import { type Clock, showMoment } from './times.ts';

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
    })),
  };
}

function bringsText({ ready, firstHandsOn }: WhatIf, { schedule }: Plan, clock: Clock): string {
  const backwards = !('none' in schedule) && schedule.readyBy !== undefined;
  const then = backwards ? firstHandsOn : ready;
  if (then === undefined) return words.brings.none;
  const text = fill(backwards ? words.brings.begins : words.brings.ready, { time: showMoment(then, clock) });
  if ('none' in schedule) return text;
  const now = backwards ? schedule.firstHandsOn : schedule.ready;
  if (now === then) return backwards ? words.brings.sameBegins : words.brings.sameReady;
  return fill(words.brings.instead, { then: text, now: showMoment(now, clock) });
}

/** Materials, deliveries, and a tool or place that is bought for it. */
function costsText({ cashToStart }: WhatIf, { cost }: Plan, { program }: Workspace): string {
  const difference = cashToStart.sub(cost.cashToStart);
  if (difference.equals(0)) return words.costs.same;
  const amount = showMoney(difference.abs(), program, 'up');
  return fill(difference.compare(0) > 0 ? words.costs.more : words.costs.less, { amount });
}
