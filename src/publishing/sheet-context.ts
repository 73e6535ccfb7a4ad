import type { Workspace } from '../core/model/workspace.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import type { Site } from '../../templates/page.tsx';
import type { SheetFacts } from '../../templates/sheet-frame.tsx';
import { rootFrom } from './paths.ts';
import type { PlannedGuide } from './planned-guides.ts';
import { sheetCode } from './sheet-code.ts';
import { webAddress } from './web-address.ts';

/** What the sheets of one guide at one level are made of. */
export interface SheetContext {
  readonly planned: PlannedGuide;
  readonly site: Pick<Site, 'program' | 'language'>;
  readonly workspace: Workspace;
  readonly read: ReadWorkspace;
  /** Of the paper that labels are set for, and that pages are told to be where `fixed`. */
  readonly paper: Paper;
  /** The paper is known, since the sheets are printed at once; else the reader's printer decides. */
  readonly isFixed: boolean;
  /** What its plan was made with, as the query of an address; empty where all is as published. */
  readonly query: string;
}
export type Paper = 'A4' | 'Letter';

/** What every sheet shares, from its own folder below the guide's. */
export function sheetFacts({ planned, site, workspace, query }: SheetContext, id: string): SheetFacts {
  const { guide, plan, line, batch, folder } = planned;
  const address = webAddress(workspace.program, planned);
  return {
    language: site.language,
    root: rootFrom(`${folder}/${id}`),
    back: '../index.html',
    guide,
    plan,
    line,
    batch,
    ...(address === undefined ? {} : { code: sheetCode(address, query) }),
  };
}
