import type { IsoDate } from '../../model/values.ts';
import type { Workspace } from '../../model/workspace.ts';

/** What the page of a guide has to plan with. All JSON. */
export interface PageData {
  readonly guide: string;
  /** The level whose page it is; the usual one where left out, absent where the guide has none. */
  readonly level?: string;
  /** The day that counts as today. */
  readonly today: IsoDate;
  /** As much of the workspace as a plan of the guide needs: `workspaceOf`. */
  readonly workspace: Workspace;
}
