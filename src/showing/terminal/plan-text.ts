import { planTextWords as words } from '../../words/plan-text.ts';
import { indented } from './columns.ts';
import { buyLines, costLines, toolLines } from './plan-text-buy.ts';
import { carefulLines } from './plan-text-careful.ts';
import { cuttingLines } from './plan-text-cutting.ts';
import { decidesLines, loadLines, readyLines } from './plan-text-decides.ts';
import { headLines, titleLines } from './plan-text-head.ts';
import { hanging } from './plan-text-parts.ts';
import { scheduleLines } from './plan-text-schedule.ts';
import { curveLines, whatIfLines } from './plan-text-what-if.ts';
import type { ShownPlan } from '../shown/shown-plan.ts';
import type { ShownCurve, ShownWhatIf } from '../shown/shown-what-if.ts';

/** What is worked out beside a plan, where it was asked for. */
export interface BesidePlan {
  readonly whatIf?: ShownWhatIf;
  readonly curve?: ShownCurve;
}

/**
 * A plan as the command line prints it: plain text in aligned columns, no line above `width`, no colours. Ends with a
 * line end.
 */
export function planText(plan: ShownPlan, width = 80, { whatIf, curve }: BesidePlan = {}): string {
  if (plan.lines.length > 0 && plan.lines.every(({ isFinished }) => isFinished))
    return `${titleLines(plan, width).join('\n')}\n`;
  const inner = width - 2;
  const { schedule } = plan;
  const blocks = [
    headLines(plan, width),
    block(words.careful, carefulLines(plan, inner)),
    block(words.buy, buyLines(plan.shopping, inner)),
    block(words.cutting, cuttingLines(plan.cutting, inner)),
    block(words.costs, costLines(plan, inner)),
    block(words.curve, curve ? curveLines(curve, inner) : []),
    block(words.tools, toolLines(plan.tools, inner)),
    block(words.schedule, scheduleLines(plan, inner)),
    block(words.ready, readyLines(schedule, inner)),
    block(words.decides, decidesLines(schedule, plan.lines.length > 1, inner)),
    block(words.loads, loadLines(schedule, inner)),
    block(words.whatIf, whatIf ? whatIfLines(whatIf, inner) : []),
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
