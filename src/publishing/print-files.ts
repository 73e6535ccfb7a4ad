import type { Plan } from '../core/plan/result.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { plannedGuide } from './planned-guides.ts';
import type { Paper } from './sheet-context.ts';
import { type SheetId, sheetLinks, sheetPages } from './sheet-pages.ts';
import type { Files } from './site.ts';

/** A sheet to make a PDF of. */
export interface SheetToPrint {
  /** `needle-block-deep-bench-sheet`: of the level that is marked usual without its name. */
  readonly name: string;
  /** Of its document, among the files. */
  readonly path: string;
}

/** A plan of one guide, and what it was made with as the query of an address: for the code on its sheets. */
export interface PlanToPrint {
  readonly plan: Plan;
  readonly query: string;
}

export interface PrintFiles {
  /** The documents and what they show, by path. */
  readonly files: Files;
  readonly sheets: readonly SheetToPrint[];
}

/**
 * The sheets of plans of one guide each, for a paper that is known.
 *
 * @param wanted  All that there are where left out.
 */
export function printFiles(
  read: ReadWorkspace & { readonly workspace: NonNullable<ReadWorkspace['workspace']> },
  plans: readonly PlanToPrint[],
  paper: Paper,
  wanted?: readonly SheetId[],
): PrintFiles {
  const all = plans.map((plan) => sheetsOfPlan(read, plan, paper, wanted));
  return {
    files: new Map(all.flatMap(({ files }) => [...files])),
    sheets: all.flatMap(({ sheets }) => sheets),
  };
}

function sheetsOfPlan(
  read: Parameters<typeof printFiles>[0],
  { plan, query }: PlanToPrint,
  paper: Paper,
  wanted?: readonly SheetId[],
): PrintFiles {
  const { workspace } = read;
  const planned = plannedGuide(workspace.guides[plan.lines[0]!.guide]!, plan, [], workspace);
  const site = { program: workspace.program.name, language: workspace.program.locale };
  const pages = sheetPages({ planned, site, workspace, read, paper, isFixed: true, query }, wanted);
  const links = sheetLinks(planned).filter(({ id }) => wanted?.includes(id) ?? true);
  const name = planned.folder.replace(/^guides\//, '').replaceAll('/', '-');
  return {
    files: new Map([...pages].map(([path, bytes]) => [`${planned.folder}/${path}`, bytes])),
    sheets: links.map(({ id, href }) => ({ name: `${name}-${id}`, path: `${planned.folder}/${href}` })),
  };
}
