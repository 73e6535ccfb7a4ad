import type { Module } from '../../model/module.ts';
import type { IsoDate } from '../../model/values.ts';
import type { Workspace } from '../../model/workspace.ts';

/** What the instructors' page of a module has to work with. All JSON; for staff. */
export interface SessionData {
  /** Without its prose. */
  readonly module: Module;
  /** The day that counts as today. */
  readonly today: IsoDate;
  /** As much of the workspace as a plan of its models needs: `workspaceOfSession`. */
  readonly workspace: Workspace;
}
