import type { IsoDate } from '../core/model/values.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { PageData } from '../core/plan/own/page-data.ts';
import { workspaceOf } from '../core/plan/own/workspace-of.ts';
import { scriptText } from '../exports/script-text.ts';

/**
 * `guides/<id>/planner-data.js`: what the page of a guide plans with, at all its levels. It sets the global
 * `plannerData`, a `PageData` without a level.
 */
export function plannerData(guide: string, workspace: Workspace, today: IsoDate): Uint8Array {
  const data: PageData = { guide, today, workspace: workspaceOf(workspace, guide) };
  return new TextEncoder().encode(scriptText('plannerData', data));
}
