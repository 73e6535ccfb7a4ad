import type { Workspace } from '../../core/model/workspace.ts';
import type { LineCost, Plan } from '../../core/plan/result.ts';
import type { Exact } from '../../core/quantity/exact.ts';
import { planWords } from '../../words/plan.ts';
import { showSum } from '../text/money.ts';
import { lineAmong, toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { toolDangers } from '../safety/product-dangers.ts';
import { shown } from '../shown/shown.ts';
import type { ShownCost, ShownPlan } from '../shown/shown-plan.ts';
import { fill } from '../text/fill.ts';

/**
 * What each of the costs is, of one line, and whether the price of tools enters it. Cash to start is of the whole
 * demand, and stands apart.
 */
const costsOfLine: readonly {
  readonly id: Exclude<ShownCost['id'], 'cash-to-start'>;
  readonly of: (cost: LineCost) => Exact | undefined;
  readonly tools: boolean;
}[] = [
  { id: 'used', of: ({ used }) => used, tools: false },
  { id: 'outlay', of: ({ outlay }) => outlay, tools: false },
  { id: 'with-tools', of: ({ withTools }) => withTools, tools: true },
  { id: 'with-labour', of: ({ withLabour }) => withLabour, tools: true },
  { id: 'per-use', of: ({ perUse }) => perUse, tools: false },
];

/** The six costs; none stands for another. Where a price is missing, those that it enters say "at least". */
export function showCosts(key: string, { cost, lines }: Plan, { program }: Workspace): readonly ShownCost[] {
  const withTools = cost.complete && cost.toolsComplete;
  const each = costsOfLine.map(({ id, of, tools }) => {
    const isSaid = id !== 'with-labour' || program.labour !== undefined;
    const texts = cost.each
      .map((line) => (isSaid ? of(line) : undefined))
      .map((sum) => (sum ? showSum(sum, program, tools ? withTools : cost.complete) : planWords.none));
    return showCost(`${key}.${id}`, id, texts, lines);
  });
  const cash = showSum(cost.cashToStart, program, withTools, 'up');
  return [...each, showCost(`${key}.cash-to-start`, 'cash-to-start', [cash], [])];
}

function showCost(
  key: string,
  id: ShownCost['id'],
  sums: readonly string[],
  lines: Plan['lines'],
): ShownCost {
  return {
    id,
    name: shown(`${key}.name`, planWords.costs[id].name),
    means: shown(`${key}.means`, planWords.costs[id].means),
    each: sums.map((sum, i) => ({
      of: shown(`${key}.each[${i}].of`, lineAmong(lines, i)),
      sum: shown(`${key}.each[${i}].sum`, sum),
    })),
  };
}

/** Tools that must be there: the most in use at once, and how many of them the program has. */
export function showTools(key: string, { tools }: Plan, workspace: Workspace): ShownPlan['tools'] {
  return tools.map(({ tool, peak, owned, toBuy }, i) => ({
    id: tool,
    name: shown(`${key}[${i}].name`, toolName(tool, workspace)),
    dangers: shown(`${key}[${i}].dangers`, toolDangers(tool, workspace)),
    need: shown(`${key}[${i}].need`, fill(planWords.tools.need, { count: showCount(peak) })),
    owned: shown(`${key}[${i}].owned`, ownedText(owned, toBuy)),
  }));
}

function ownedText(owned: number | undefined, toBuy: number): string {
  const { tools } = planWords;
  if (owned === undefined) return tools.unknown;
  const has = fill(tools.owned, { count: showCount(owned) });
  return toBuy > 0 ? `${has}${planWords.listComma}${fill(tools.toBuy, { count: showCount(toBuy) })}` : has;
}
