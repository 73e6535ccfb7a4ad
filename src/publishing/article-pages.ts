import type { Workspace } from '../core/model/workspace.ts';
import { htmlBytes } from '../rendering/html.ts';
import { type ShownArticle, showMaterialArticles, showToolArticles } from '../showing/show-library.ts';
import { articlesPage } from '../../templates/articles-page.tsx';
import type { Site } from '../../templates/page.tsx';
import { safetyPage } from '../../templates/safety-page.tsx';
import type { PlannedGuide } from './planned-guides.ts';
import type { Files } from './site.ts';

/** Materials, tools, and what of them can hurt. */
export function articlePages(site: Site, guides: readonly PlannedGuide[], workspace: Workspace): Files {
  const materials = showMaterialArticles(workspace);
  const tools = showToolArticles(workspace);
  const inUse = (articles: readonly ShownArticle[], uses: Uses) =>
    articles.map((article) => ({ article, usedIn: usersOf(article.id, guides, uses) }));
  const policy = workspace.program.policy;
  return new Map([
    ['materials/index.html', htmlBytes(articlesPage(site, 'materials', inUse(materials, usesMaterial)))],
    ['tools/index.html', htmlBytes(articlesPage(site, 'tools', inUse(tools, usesTool)))],
    [
      'safety/index.html',
      htmlBytes(
        safetyPage({
          site,
          ...(policy ? { policy } : {}),
          dangerous: [
            ...dangerous(materials, guides, 'materials', usesMaterial),
            ...dangerous(tools, guides, 'tools', usesTool),
          ],
        }),
      ),
    ],
  ]);
}

type Uses = (planned: PlannedGuide, id: string) => boolean;

const usesMaterial: Uses = ({ line }, id) => line.materials.some(({ material }) => material === id);
const usesTool: Uses = ({ plan }, id) => plan.tools.some((tool) => tool.id === id);

/** Guides that use an article at any level, each once, with the way from a folder of the edition. */
function usersOf(
  id: string,
  guides: readonly PlannedGuide[],
  uses: Uses,
): readonly { title: string; href: string }[] {
  const users = new Map(
    guides
      .filter((planned) => uses(planned, id))
      .map(
        ({ written }) =>
          [written.id, { title: written.title, href: `../guides/${written.id}/index.html` }] as const,
      ),
  );
  return [...users.values()];
}

function dangerous(
  articles: readonly ShownArticle[],
  guides: readonly PlannedGuide[],
  kind: 'materials' | 'tools',
  uses: Uses,
) {
  const anchor = kind === 'materials' ? 'material' : 'tool';
  return articles
    .filter(({ dangers }) => dangers.length > 0)
    .map((article) => ({
      article,
      href: `../${kind}/index.html#${anchor}-${article.id}`,
      guides: usersOf(article.id, guides, uses),
    }));
}
