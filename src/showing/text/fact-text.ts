import type { Workspace } from '../../core/model/workspace.ts';
import { inCurrency } from '../../core/money/money.ts';
import { showMoney } from './money.ts';
import { withThousands } from './numbers.ts';
import { type Clock, showKeeping, showMinutes, showMoment } from './times.ts';

/**
 * A fact that the planner gives, as it is printed everywhere else; what is none of these stays as it is.
 *
 *     "4.95 GBP" -> "£4.95"      "@1440" -> "day 2, 00:00"      "90 min" -> "1 h 30 min"
 *     "6 mo" -> "6 months"      "12000" -> "12,000"
 */
export function factText(fact: string, clock: Clock, { program }: Workspace): string {
  const [, amount, currency] = /^(\d+(?:\.\d+|\/\d+)?) ([A-Z]{3})$/.exec(fact) ?? [];
  const sum = amount && currency ? inCurrency({ amount, currency }, program) : undefined;
  if (sum) return showMoney(sum, program, 'up');
  const [, moment] = /^@(\d+)$/.exec(fact) ?? [];
  if (moment) return showMoment(Number(moment), clock);
  const [, minutes] = /^(\d+) min$/.exec(fact) ?? [];
  if (minutes) return showMinutes(Number(minutes));
  const [, months] = /^([\d./]+) mo$/.exec(fact) ?? [];
  if (months) return showKeeping({ months });
  return /^\d+$/.test(fact) ? withThousands(fact) : fact;
}
