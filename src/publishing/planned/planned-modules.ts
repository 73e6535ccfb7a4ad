import type { Module } from '../../core/model/module.ts';
import { moduleDepths } from '../../core/model/module-depths.ts';
import { usualLevel } from '../../core/model/plan-at.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { IsoDate } from '../../core/model/values.ts';
import { sessionQuestion } from '../../core/plan/cohort/session-question.ts';
import { makePlan } from '../../core/plan/plan.ts';
import { showPlan } from '../../showing/plan/show-plan.ts';
import { type ModuleToShow, type ShownModuleParts, showModuleParts } from './module-parts.ts';
import type { PlannedGuide } from './planned-guides.ts';

/** A module with what its own people take, and all of it as finished text. */
export interface PlannedModule extends ModuleToShow {
  readonly shown: ShownModuleParts;
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
    const planned: ModuleToShow = {
      module,
      folder: `modules/${module.id}`,
      cohort,
      ...(plan && !('refused' in plan) ? { plan: showPlan(plan, workspace) } : {}),
      guides: guidesOf(module, workspace, guides),
    };
    return { ...planned, shown: showModuleParts(planned, workspace) };
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
