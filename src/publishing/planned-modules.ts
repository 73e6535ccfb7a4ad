import type { Module } from '../core/model/module.ts';
import { moduleDepths } from '../core/model/module-depths.ts';
import { usualLevel } from '../core/model/plan-at.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { IsoDate } from '../core/model/values.ts';
import type { CohortPlan } from '../core/plan/cohort/cohort.ts';
import { sessionQuestion } from '../core/plan/cohort/session-question.ts';
import { makePlan } from '../core/plan/plan.ts';
import { showPlan } from '../showing/show-plan.ts';
import type { ShownPlan } from '../showing/shown.ts';
import type { PlannedGuide } from './planned-guides.ts';

/** A module with what its own people take, and the guides whose models they practise on. */
export interface PlannedModule {
  readonly module: Module;
  /** From the edition's folder: `modules/knots-and-stitches`. */
  readonly folder: string;
  readonly cohort: CohortPlan;
  /** All its models in one plan; absent where it needs none. */
  readonly plan?: ShownPlan;
  /** Each once, in the order of the stations. */
  readonly guides: readonly PlannedGuide[];
}

/** Every module, each behind those that come before it; else by title. */
export function planModules(
  workspace: Workspace,
  guides: readonly PlannedGuide[],
  today: IsoDate,
): readonly PlannedModule[] {
  return inTeachingOrder(Object.values(workspace.modules)).map((module) => {
    const { cohort, demand, settings } = sessionQuestion(module, workspace, {}, { today });
    const plan = demand.length === 0 ? undefined : makePlan(workspace, demand, settings);
    return {
      module,
      folder: `modules/${module.id}`,
      cohort,
      ...(plan && !('refused' in plan) ? { plan: showPlan(plan, workspace) } : {}),
      guides: guidesOf(module, workspace, guides),
    };
  });
}

function inTeachingOrder(modules: readonly Module[]): readonly Module[] {
  const depths = moduleDepths(modules);
  const order = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
  return [...modules].sort(
    (a, b) =>
      depths.get(a.id)! - depths.get(b.id)! ||
      order(a.title.toLowerCase(), b.title.toLowerCase()) ||
      order(a.id, b.id),
  );
}

/** The guides of a module's stations at their levels, each once, in the order of the stations. */
export function guidesOf(
  { stations }: Module,
  workspace: Workspace,
  guides: readonly PlannedGuide[],
): readonly PlannedGuide[] {
  const named = stations.flatMap(({ models }) =>
    models.flatMap(({ guide, level }) => {
      const written = workspace.guides[guide];
      const at = level ?? (written && usualLevel(written));
      return guides.filter((planned) => planned.written.id === guide && planned.level === at);
    }),
  );
  return [...new Set(named)];
}
