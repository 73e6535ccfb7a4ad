import type { Diagnostic } from './core/diagnostic.ts';
import type { IsoDate } from './core/model/values.ts';
import { runChecks } from './checks/checks.ts';
import { preparePictures } from './publishing/pictures/pictures.ts';
import { manualFiles, shippedFiles } from './publishing/disk/shipped.ts';
import { type Edition, editions as allEditions } from './publishing/paths/files.ts';
import { makeSite } from './publishing/site.ts';
import { type Published, writeSite } from './publishing/disk/swap.ts';
import { readFolder } from './reading/from-disk.ts';
import type { ReadWorkspace } from './reading/read.ts';
import { inReadingOrder } from './reading/report.ts';

export { advised } from './core/plan/compare/advised.ts';
export { makePlan } from './core/plan/plan.ts';
export { dayListCsv } from './exports/day-list-csv.ts';
export { planIcs } from './exports/plan-ics.ts';
export { planJson } from './exports/plan-json.ts';
export { shoppingCsv } from './exports/shopping-csv.ts';
export { findingsJson } from './exports/findings-json.ts';
export { planText } from './showing/terminal/plan-text.ts';
export { showDiagnostic } from './showing/terminal/diagnostic.ts';
export { showEvents } from './showing/schedule/show-events.ts';
export { showPlan } from './showing/plan/show-plan.ts';
export { workOfEach } from './showing/schedule/work-of-each.ts';
export type { Diagnostic, Place, Severity } from './core/diagnostic.ts';
export type { Workspace } from './core/model/workspace.ts';
export type { DemandLine, PlanSettings } from './core/plan/demand.ts';
export type { Plan } from './core/plan/result.ts';
export type { Edition } from './publishing/paths/files.ts';
export type { Published } from './publishing/disk/swap.ts';
export type { ReadWorkspace } from './reading/read.ts';
export type { ShownPlan } from './showing/shown/shown-plan.ts';

/** Reads a workspace from its folder. What is wrong with it comes back as `diagnostics`; nothing is thrown for it. */
export async function readWorkspace(folder: string): Promise<ReadWorkspace> {
  return readFolder(folder);
}

/**
 * All that is wrong with a workspace as it was read, by file and line: what kept its files from being read, then what
 * is missing in them or does not add up.
 *
 * @param today     The day that prices and reviews are old by.
 * @param compared  Guides whose stated figures are compared with a plan; all where left out.
 */
export function check(
  read: ReadWorkspace,
  { today, compared }: { readonly today: IsoDate; readonly compared?: readonly string[] },
): readonly Diagnostic[] {
  const { workspace, origins, unread, files, diagnostics } = read;
  if (!workspace) return diagnostics;
  return inReadingOrder([
    ...diagnostics,
    ...runChecks({ workspace, origins, unread, files, today, ...(compared ? { compared } : {}) }),
  ]);
}

export interface PublishSettings {
  /** The folder to write into: `trainees/` and `staff/` in it, and a page that leads to them. */
  readonly out: string;
  readonly today: IsoDate;
  /** Both where left out. */
  readonly editions?: readonly Edition[];
  /** Told as each photo is begun: which one, of how many. */
  readonly onPhoto?: (photo: number, of: number) => void;
}

/**
 * Makes the site of a workspace and writes it, each edition swapped whole.
 *
 * @returns What was written; or why nothing was: a broken photo, a guide that cannot be planned, a folder that publish did not make,
 *          another publish under way.
 * @throws The disk's own errors. The old site then still stands.
 * @throws {Bug} For a workspace with errors: `check` comes first.
 */
export async function publish(
  read: ReadWorkspace,
  { out, today, editions = allEditions, onPhoto }: PublishSettings,
): Promise<Published | { readonly refused: readonly Diagnostic[] }> {
  const pictures = await preparePictures(read, onPhoto);
  if ('refused' in pictures) return pictures;
  const [shipped, manual] = await Promise.all([shippedFiles(), manualFiles()]);
  const files = makeSite({ read, pictures, today, shipped, manual, editions });
  return 'refused' in files ? files : writeSite(out, files, editions);
}
