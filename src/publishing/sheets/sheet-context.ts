import type { Paper } from '../../core/model/paper.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { ReadWorkspace } from '../../reading/read.ts';
import type { Site } from '../../../templates/page/site.ts';
import { given } from '../../core/given.ts';
import type { SheetFacts, SheetFollows } from '../../../templates/sheets/sheet-frame.tsx';
import { rootFrom } from '../paths/paths.ts';
import type { PlannedGuide } from '../planned/planned-guides.ts';
import { sheetCode } from './sheet-code.ts';
import { type HeadWords, marginTitle } from './margin-title.ts';
import { webAddress } from '../paths/web-address.ts';

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

/**
 * What every sheet shares, from its own folder below the guide's.
 *
 * @param words  Of the margins of its printed pages, if it has any.
 */
export function sheetFacts(context: SheetContext, id: string, words?: HeadWords): SheetFacts {
  const { planned, site, workspace, query, isFixed } = context;
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
    ...(isFixed ? {} : { follows: followsOf(planned, words) }),
  };
}

/** A sheet of a site follows the settings that its address has. */
function followsOf(planned: PlannedGuide, words: HeadWords | undefined): SheetFollows {
  const { isUsual, level } = planned;
  return given<SheetFollows>({
    data: `${isUsual ? '' : '../'}../planner-data.js`,
    level,
    margin: words && marginTitle(planned, words, '{batch}'),
  });
}
