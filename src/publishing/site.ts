import type { Diagnostic } from '../core/diagnostic.ts';
import type { IsoDate } from '../core/model/values.ts';
import { Bug } from '../core/diagnostic.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { htmlBytes } from '../rendering/html.ts';
import { showCatalogue } from '../showing/library/show-catalogue.ts';
import { doorPage } from '../../templates/library/door-page.tsx';
import { articlePages } from './library/article-pages.ts';
import { cataloguePages } from './library/catalogue-pages.ts';
import { guidePages } from './guides/guide-pages.ts';
import { manualPages, readManual } from './library/manual-pages.ts';
import type { ModuleContext } from './modules/module-context.ts';
import { modulePages } from './modules/module-pages.ts';
import type { Pictures } from './pictures/pictures.ts';
import { type PlannedGuide, planGuides } from './planned/planned-guides.ts';
import { type Edition, type Files, editions } from './paths/files.ts';
import { findablePages } from './library/findable-pages.ts';
import { type PlannedModule, planModules } from './planned/planned-modules.ts';
import { plannerData } from './guides/planner-data.ts';
import { searchPages } from './library/search-pages.ts';
import { siteOf } from './site-facts.ts';

export interface SiteParts {
  readonly read: ReadWorkspace;
  /** Its pictures, as `preparePictures` makes them. */
  readonly pictures: Pictures;
  /** The day that counts as today. */
  readonly today: IsoDate;
  /** What every site carries, by path: `styles/site.css`, `scripts/search.js`, `fonts/…`. */
  readonly shipped: Files;
  /** Pages of the manual by file name: `limits.md`. */
  readonly manual?: Files;
  /** Both where left out. */
  readonly editions?: readonly Edition[];
}

/**
 * The whole site as a value: every file by its path, `trainees/index.html` and so on, and an `index.html` that leads
 * to the editions. Pure: same input, same bytes. Each edition holds all that it needs, so that it can be carried off
 * alone.
 *
 * @returns The files, by path in alphabetical order; or why a plan of some guide is refused.
 * @throws {Bug} Without a workspace, or with one that has errors: the checks come first.
 */
export function makeSite(parts: SiteParts): Files | { readonly refused: readonly Diagnostic[] } {
  const { workspace } = parts.read;
  if (!workspace) throw new Bug('a site needs a workspace');
  const guides = planGuides(workspace, parts.today);
  if ('refused' in guides) return guides;
  const wanted = parts.editions ?? editions;
  const modules = planModules(workspace, guides, parts.today);
  const shared = sharedFiles(parts, guides, modules);
  const door = htmlBytes(doorPage(siteOf(workspace, []), wanted));
  const files = wanted.flatMap((edition) => {
    const own = modulePages(modules, contextOf(parts, edition));
    return [...joined([forEdition(shared, edition), own])].map(
      ([path, bytes]) => [`${edition}/${path}`, bytes] as const,
    );
  });
  return new Map([...files, ['index.html', door] as const].sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Trainees get no script that works for staff alone. */
function forEdition(shared: Files, edition: Edition): Files {
  if (edition === 'staff') return shared;
  return new Map([...shared].filter(([path]) => path !== 'scripts/session.js'));
}

/** What pages of modules are made of, which differ by edition. */
function contextOf({ read, pictures, manual, today }: SiteParts, edition: Edition): ModuleContext {
  const workspace = read.workspace!;
  return { site: siteOf(workspace, readManual(manual)), workspace, read, pictures, edition, today };
}

/** What both editions hold: everything but the pages of modules, since nothing else is for staff alone. */
function sharedFiles(
  parts: SiteParts,
  guides: readonly PlannedGuide[],
  modules: readonly PlannedModule[],
): Files {
  const { read, shipped } = parts;
  const manual = readManual(parts.manual);
  const workspace = read.workspace!;
  const site = siteOf(workspace, manual);
  const usual = guides.filter(({ isUsual }) => isUsual);
  const catalogue = showCatalogue(
    usual.map(({ computed }) => computed),
    workspace,
  );
  return joined([
    shipped,
    cataloguePages(site, guides, catalogue),
    guidePages(site, guides, workspace, read, parts.pictures),
    plannerFiles(parts),
    articlePages(site, guides, workspace, parts.today),
    manualPages(site, manual),
    searchPages(site, findablePages(guides, modules, workspace, read, manual), catalogue, workspace),
  ]);
}

/** What the page of each guide plans with. */
function plannerFiles({ read, today }: SiteParts): Files {
  const workspace = read.workspace!;
  return new Map(
    Object.keys(workspace.guides).map((id) => [
      `guides/${id}/planner-data.js`,
      plannerData(id, workspace, today),
    ]),
  );
}

/** @throws {Bug} When two pages claim one path. */
function joined(all: readonly Files[]): Files {
  const files = new Map<string, Uint8Array>();
  for (const [path, bytes] of all.flatMap((part) => [...part])) {
    if (files.has(path)) throw new Bug('two pages claim one path', { path });
    files.set(path, bytes);
  }
  return files;
}
