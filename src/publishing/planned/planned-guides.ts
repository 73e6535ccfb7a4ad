import type { Diagnostic } from '../../core/diagnostic.ts';
import type { Guide } from '../../core/model/guide.ts';
import { usualLevel } from '../../core/model/plan-at.ts';
import type { IsoDate } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { advised } from '../../core/plan/compare/advised.ts';
import { outlayCurve } from '../../core/plan/compare/curve.ts';
import { makePlan } from '../../core/plan/plan.ts';
import type { CurvePoint, Plan } from '../../core/plan/result.ts';
import { counted } from '../../showing/text/fill.ts';
import { type ShownGuide, showGuide } from '../../showing/library/show-guide.ts';
import { showCurve } from '../../showing/compare/show-curve.ts';
import { showPlan } from '../../showing/plan/show-plan.ts';
import type { ShownLine, ShownPlan } from '../../showing/shown/shown-plan.ts';
import type { ShownCurve } from '../../showing/shown/shown-what-if.ts';

/** A guide at one level with the plan of its published batch, as finished text. */
export interface PlannedGuide {
  readonly written: Guide;
  readonly level?: string;
  /** The level marked usual: its page is the guide's own. */
  readonly isUsual: boolean;
  /** From the edition's folder: `guides/needle-block` or `guides/needle-block/deep`. */
  readonly folder: string;
  readonly guide: ShownGuide;
  readonly plan: ShownPlan;
  /** The same, exact and unworded. */
  readonly computed: Plan;
  readonly line: ShownLine;
  /** What other sizes of the batch cost. */
  readonly curve?: ShownCurve;
  readonly made: number;
  /** "4 models" */
  readonly batch: string;
}

/** Every guide at every level, by title and in the order of its levels; or why a plan is refused. */
export function planGuides(
  workspace: Workspace,
  today: IsoDate,
): readonly PlannedGuide[] | { readonly refused: readonly Diagnostic[] } {
  const planned: PlannedGuide[] = [];
  const refused: Diagnostic[] = [];
  for (const guide of byTitle(Object.values(workspace.guides))) {
    for (const level of levelsOf(guide)) {
      const demand = { guide: guide.id, ...(level === undefined ? {} : { level }) };
      const question = { workspace, demand: [demand], settings: { today } };
      const plan = makePlan(workspace, [demand], { today });
      if ('refused' in plan) refused.push(...plan.refused);
      else {
        const curve = outlayCurve(workspace, demand, { today });
        planned.push(plannedGuide(guide, advised(question, plan), curve, workspace));
      }
    }
  }
  return refused.length > 0 ? { refused } : planned;
}

function byTitle(guides: readonly Guide[]): readonly Guide[] {
  const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
  return [...guides].sort((a, b) => order(a.title.toLowerCase(), b.title.toLowerCase()) || order(a.id, b.id));
}

function levelsOf({ levels }: Guide): readonly (string | undefined)[] {
  return levels.length === 0 ? [undefined] : levels.map(({ id }) => id);
}

export function plannedGuide(
  written: Guide,
  plan: Plan,
  points: readonly CurvePoint[],
  workspace: Workspace,
): PlannedGuide {
  const { at, made, level } = plan.lines[0]!;
  const isUsual = level === usualLevel(written);
  const shown = showPlan(plan, workspace);
  return {
    written,
    ...(level === undefined ? {} : { level }),
    isUsual,
    folder: `guides/${written.id}${isUsual ? '' : `/${level}`}`,
    guide: showGuide(at, workspace),
    plan: shown,
    computed: plan,
    line: shown.lines[0]!,
    ...(points.length > 0 ? { curve: showCurve(points, plan, workspace) } : {}),
    made,
    batch: counted(made, 'model'),
  };
}
