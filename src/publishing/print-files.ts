import type { Module } from '../core/model/module.ts';
import type { Paper } from '../core/model/paper.ts';
import type { IsoDate } from '../core/model/values.ts';
import type { Workspace } from '../core/model/workspace.ts';
import type { CohortPlan } from '../core/plan/cohort/cohort.ts';
import type { SessionTime } from '../core/plan/cohort/session-question.ts';
import { makePlan } from '../core/plan/plan.ts';
import type { Plan } from '../core/plan/result.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { showModuleParts } from './planned/module-parts.ts';
import { moduleSheetFiles, moduleSheetIds } from './modules/module-sheets.ts';
import { type PlannedGuide, plannedGuide } from './planned/planned-guides.ts';
import { guidesOf } from './planned/planned-modules.ts';
import { sheetLinks, sheetPages } from './sheets/sheet-pages.ts';
import type { Files } from './paths/files.ts';

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
  wanted?: readonly string[],
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
  wanted?: readonly string[],
): PrintFiles {
  const { workspace } = read;
  const planned = plannedGuide(workspace.guides[plan.lines[0]!.guide]!, plan, [], workspace);
  const site = { program: workspace.program.name, language: workspace.program.locale };
  const links = sheetLinks(planned).filter(({ id }) => wanted?.includes(id) ?? true);
  const ids = links.map(({ id }) => id);
  const pages = sheetPages({ planned, site, workspace, read, paper, isFixed: true, query }, ids);
  const name = planned.folder.replace(/^guides\//, '').replaceAll('/', '-');
  return {
    files: new Map([...pages].map(([path, bytes]) => [`${planned.folder}/${path}`, bytes])),
    sheets: links.map(({ id, href }) => ({ name: `${name}-${id}`, path: `${planned.folder}/${href}` })),
  };
}

/**
 * The sheets of a module, those for staff among them, for a paper that is known.
 *
 * @param session  The module with the people and the day that are asked for.
 */
export function printModule(
  session: SessionToPrint,
  workspace: Workspace,
  today: IsoDate,
  paper: Paper,
  wanted?: readonly string[],
): PrintFiles {
  const { module, cohort, time } = session;
  const folder = `modules/${module.id}`;
  const guides = guidesOf(module, workspace, modelsPlanned(module, workspace, today));
  const parts = showModuleParts({ module, folder, cohort, guides }, workspace, time);
  const ids = moduleSheetIds(parts, true).filter((id) => wanted?.includes(id) ?? true);
  const { name: program, locale: language } = workspace.program;
  const files = moduleSheetFiles(parts, ids, { language, program, paper });
  return {
    files: new Map([...files].map(([path, bytes]) => [`${folder}/${path}`, bytes])),
    sheets: ids.map((id) => ({ name: `${module.id}-${id}`, path: `${folder}/${id}/index.html` })),
  };
}

/** A session of a module. */
export interface SessionToPrint {
  readonly module: Module;
  readonly cohort: CohortPlan;
  readonly time: SessionTime;
}

/** One model of each guide and level that the stations use: sheets say what is in it. */
function modelsPlanned({ stations }: Module, workspace: Workspace, today: IsoDate): readonly PlannedGuide[] {
  return stations.flatMap(({ models }) =>
    models.flatMap(({ guide, level }) => {
      const written = workspace.guides[guide];
      const line = { guide, ...(level === undefined ? {} : { level }), wanted: 1 };
      const plan = makePlan(workspace, [line], { today });
      return written && !('refused' in plan) ? [plannedGuide(written, plan, [], workspace)] : [];
    }),
  );
}
