import type { IsoDate } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { ReadWorkspace } from '../../reading/read.ts';
import type { Site } from '../../../templates/page/site.ts';
import type { Pictures } from '../pictures/pictures.ts';
import type { Edition } from '../paths/files.ts';

/** What the pages of modules are made of. */
export interface ModuleContext {
  readonly site: Site;
  readonly workspace: Workspace;
  readonly read: ReadWorkspace;
  readonly pictures: Pictures;
  readonly edition: Edition;
  /** The day that counts as today. */
  readonly today: IsoDate;
}
