import { given } from '../../core/given.ts';
import type { IsoDate } from '../../core/model/values.ts';
import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { PageData } from '../../core/plan/own/page-data.ts';
import type { SessionData } from '../../core/plan/own/session-data.ts';
import { workspaceOf, workspaceOfSession } from '../../core/plan/own/workspace-of.ts';
import { scriptText } from '../../exports/script-text.ts';

/**
 * `guides/<id>/planner-data.js`: what the page of a guide plans with, at all its levels. It sets the global
 * `plannerData`, a `PageData` without a level.
 */
export function plannerData(guide: string, workspace: Workspace, today: IsoDate): Uint8Array {
  const data: PageData = { guide, today, workspace: workspaceOf(workspace, guide) };
  return new TextEncoder().encode(scriptText('plannerData', data));
}

/**
 * `modules/<id>/session/session-data.js`: what the instructors' page works with. It sets the global `sessionData`. What
 * no count of people changes stays out of it, above all what judges and raters said.
 */
export function sessionData(module: Module, workspace: Workspace, today: IsoDate): Uint8Array {
  const slim = given<Module>({
    ...module,
    scoring: undefined,
    objectives: [],
    surveys: [],
    selfCheck: [],
    prose: { sections: [], links: [], images: [] },
  });
  const data: SessionData = { module: slim, today, workspace: workspaceOfSession(workspace, module) };
  return new TextEncoder().encode(scriptText('sessionData', data));
}
