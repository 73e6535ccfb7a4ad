import { type InPieces, atOnce, oneByOne } from '../../core/in-pieces.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan, PlannedLine } from '../../core/plan/result.ts';
import { planWords } from '../../words/plan.ts';
import { safetyWords } from '../../words/safety.ts';
import { deferral } from '../safety/deferral.ts';
import { counted, fill } from '../text/fill.ts';
import { lineName } from '../text/names.ts';
import { showCosts, showTools } from './show-costs.ts';
import { showCutting } from '../cutting/show-cutting.ts';
import { showPlanFacts } from './show-facts.ts';
import { showLine } from './show-line.ts';
import { showSchedule } from '../schedule/show-schedule.ts';
import { showShopping } from '../shopping/show-shopping.ts';
import { showWarnings } from './show-warnings.ts';
import { shown } from '../shown/shown.ts';
import type { ShownPlan } from '../shown/shown-plan.ts';

/**
 * A plan as finished text: every number rounded, every sentence filled. Command line, pages and browser print these
 * letters and no others.
 */
export function showPlan(plan: Plan, workspace: Workspace): ShownPlan {
  return atOnce(showingPlan(plan, workspace));
}

/** The same, in small pieces of work. */
export function* showingPlan(plan: Plan, workspace: Workspace): InPieces<ShownPlan> {
  const lines = yield* oneByOne(plan.lines, (_, i) => showLine(`lines[${i}]`, plan, i, workspace));
  const cutting = yield* oneByOne(plan.cutting, (cut, i) =>
    showCutting(`cutting[${i}]`, cut, plan, workspace),
  );
  const schedule = showSchedule('schedule', plan, workspace);
  yield;
  const defers = deferral(workspace.program);
  return {
    title: shown('title', plan.lines.map(titleText).join(planWords.andAlso)),
    facts: showPlanFacts('facts', plan, workspace),
    trainingOnly: shown('trainingOnly', safetyWords.trainingOnly),
    defers: shown('defers', defers.inFull),
    defersAtStep: shown('defersAtStep', defers.atStep),
    lines,
    shopping: showShopping('shopping', plan, workspace),
    cutting,
    costs: showCosts('costs', plan, workspace),
    tools: showTools('tools', plan, workspace),
    schedule,
    warnings: showWarnings('warnings', plan, workspace),
  };
}

/** "Ultrasound needle block: 4 models". */
function titleText(line: PlannedLine): string {
  const { title, titlePart } = planWords;
  const facts = { line: lineName(line), models: counted(line.made, 'model') };
  return fill(line.part === undefined ? title : titlePart, facts);
}
