import { planTextWords as words } from '../words/plan-text.ts';
import { indented } from './columns.ts';
import { buyLines, costLines, toolLines } from './plan-text-buy.ts';
import { carefulLines } from './plan-text-careful.ts';
import { headLines } from './plan-text-head.ts';
import { scheduleLines } from './plan-text-schedule.ts';
import { hanging } from './plan-text-parts.ts';
import type { ShownPlan } from './shown.ts';

/**
 * A plan as the command line prints it: plain text in aligned columns, no line above `width`, no colours. Ends with a
 * line end.
 */
export function planText(plan: ShownPlan, width = 80): string {
  const inner = width - 2;
  const blocks = [
    headLines(plan, width),
    block(words.careful, carefulLines(plan, inner)),
    block(words.buy, buyLines(plan.shopping, inner)),
    block(words.costs, costLines(plan, inner)),
    block(words.tools, toolLines(plan.tools, inner)),
    block(words.schedule, scheduleLines(plan, inner)),
    block(
      words.warnings,
      plan.warnings.flatMap(({ text }) => hanging('-', text, inner)),
    ),
  ];
  const texts = blocks.filter((lines) => lines.length > 0).map((lines) => lines.join('\n'));
  return `${texts.join('\n\n')}\n`;
}

/** A heading and what stands below it; nothing where nothing does. */
function block(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [heading, ...indented(lines)];
}
