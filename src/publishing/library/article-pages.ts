import type { IsoDate } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { safetyCsv } from '../../exports/safety-csv.ts';
import { htmlBytes } from '../../rendering/html.ts';
import {
  type ShownArticle,
  showMaterialArticles,
  showToolArticles,
} from '../../showing/library/show-library.ts';
import { type ShownHazard, safetyRows, showSafety } from '../../showing/safety/show-safety.ts';
import { articlesPage } from '../../../templates/library/articles-page.tsx';
import type { Link } from '../../../templates/page/lists.tsx';
import type { Site } from '../../../templates/page/site.ts';
import { safetyPage } from '../../../templates/library/safety-page.tsx';
import type { PlannedGuide } from '../planned/planned-guides.ts';
import type { Files } from '../paths/files.ts';

/** Materials, tools, and what of them can hurt. */
export function articlePages(
  site: Site,
  guides: readonly PlannedGuide[],
  workspace: Workspace,
  today: IsoDate,
): Files {
  const materials = showMaterialArticles(workspace);
  const tools = showToolArticles(workspace);
  const inUse = (articles: readonly ShownArticle[], uses: Uses) =>
    articles.map((article) => ({ article, usedIn: usersOf(article.id, guides, uses) }));
  return new Map([
    ['materials/index.html', htmlBytes(articlesPage(site, 'materials', inUse(materials, usesMaterial)))],
    ['tools/index.html', htmlBytes(articlesPage(site, 'tools', inUse(tools, usesTool)))],
    ...safetyFiles(site, workspace, today),
  ]);
}

type Uses = (planned: PlannedGuide, id: string) => boolean;

const usesMaterial: Uses = ({ line }, id) => line.materials.some(({ material }) => material === id);
const usesTool: Uses = ({ plan }, id) => plan.tools.some((tool) => tool.id === id);

/** Guides that use an article at any level, each once, with the way from a folder of the edition. */
function usersOf(id: string, guides: readonly PlannedGuide[], uses: Uses): readonly Link[] {
  const users = new Map(
    guides
      .filter((planned) => uses(planned, id))
      .map(
        ({ written }) =>
          [written.id, { name: written.title, href: `../guides/${written.id}/index.html` }] as const,
      ),
  );
  return [...users.values()];
}

/** The register of hazards as a page, and as a table beside it. */
function safetyFiles(site: Site, workspace: Workspace, today: IsoDate): Files {
  const hazards = showSafety(workspace, today);
  const page = safetyPage({
    site,
    hazards: hazards.map((hazard) => ({ hazard, ...entryOf(hazard) })),
    csv: 'hazards.csv',
  });
  return new Map([
    ['safety/index.html', htmlBytes(page)],
    ['safety/hazards.csv', new TextEncoder().encode(safetyCsv(safetyRows(hazards)))],
  ]);
}

/** The entry of a material or a tool; heat and flame have none. */
function entryOf({ kind, id }: ShownHazard): { readonly href?: string } {
  return kind === 'material' || kind === 'tool' ? { href: `../${kind}s/index.html#${kind}-${id}` } : {};
}
