import type { Workspace } from '../core/model/workspace.ts';
import type { ReadWorkspace } from '../reading/read.ts';
import { htmlBytes } from '../rendering/html.ts';
import { plainText } from '../rendering/prose.ts';
import { type SearchDocument, searchDocument, searchScript } from '../rendering/search-documents.ts';
import { type ShownArticle, showMaterialArticles, showToolArticles } from '../showing/show-library.ts';
import type { Site } from '../../templates/page.tsx';
import { searchPage } from '../../templates/search-page.tsx';
import { folderOf, type ManualPage } from './manual-pages.ts';
import type { PlannedGuide } from './planned-guides.ts';
import type { Files } from './site.ts';

type Page = Omit<SearchDocument, 'words'> & { readonly text: string };

/** The page of the search, and its documents as a script. */
export function searchPages(
  site: Site,
  guides: readonly PlannedGuide[],
  workspace: Workspace,
  read: ReadWorkspace,
  manual: readonly ManualPage[],
): Files {
  const pages: readonly Page[] = [
    ...guides.filter(({ isUsual }) => isUsual).map((planned) => guideEntry(planned, read)),
    ...showMaterialArticles(workspace).map((article) => articleEntry('material', article)),
    ...showToolArticles(workspace).map((article) => articleEntry('tool', article)),
    ...manual.map((page) => ({
      href: `${folderOf(page)}/index.html`,
      kind: 'page' as const,
      title: page.title,
      says: '',
      text: plainText(page.root),
    })),
  ];
  const documents = pages.map((page) => searchDocument(page, workspace.program.sayAlso));
  return new Map([
    ['search/index.html', htmlBytes(searchPage(site))],
    ['search/documents.js', new TextEncoder().encode(searchScript(documents))],
  ]);
}

function guideEntry({ guide, folder, line, written }: PlannedGuide, read: ReadWorkspace): Page {
  const document = read.documents[written.id];
  const names = [...line.materials, ...line.steps.flatMap(({ takes }) => takes)].map(({ name }) => name.text);
  return {
    href: `${folder}/index.html`,
    kind: 'guide',
    title: guide.title.text,
    says: guide.trains.text || guide.summary.text,
    text: [guide.summary.text, ...names, document ? plainText(document.root) : ''].join(' '),
  };
}

function articleEntry(kind: 'material' | 'tool', { id, name, must, dangers }: ShownArticle): Page {
  return {
    href: `${kind}s/index.html#${kind}-${id}`,
    kind,
    title: name.text,
    says: must.map(({ text }) => text).join(', '),
    text: dangers.map(({ text }) => text).join(' '),
  };
}
