import type { Workspace } from '../../core/model/workspace.ts';
import { type FindablePage, searchLibrary, searchScript } from '../../exports/search-library.ts';
import { htmlBytes } from '../../rendering/html.ts';
import type { ShownCatalogue } from '../../showing/shown/shown-catalogue.ts';
import { pageWords } from '../../words/pages.ts';
import { searchWords } from '../../words/search.ts';
import type { Site } from '../../../templates/page/site.ts';
import { searchPage } from '../../../templates/library/search-page.tsx';
import type { Files } from '../paths/files.ts';

/** The page of the search, and what it knows as a script: the same in both editions, so nothing that is for staff. */
export function searchPages(
  site: Site,
  pages: readonly FindablePage[],
  catalogue: ShownCatalogue,
  workspace: Workspace,
): Files {
  const library = searchLibrary(pages, workspace.program.sayAlso, waysOn(site, catalogue));
  return new Map([
    ['search/index.html', htmlBytes(searchPage(site))],
    ['search/library.js', new TextEncoder().encode(searchScript(library))],
  ]);
}

/** Where to look when nothing is found: the pages that list everything, and the catalogue by some of its choices. */
function waysOn(site: Site, { facets }: ShownCatalogue): readonly (readonly [string, string])[] {
  const by = Object.entries(searchWords.guidesBy).filter(([id]) => facets.some((facet) => facet.id === id));
  return [
    ...site.places.map(({ id, path }) => [pageWords.places[id], path] as const),
    ...by.map(([id, name]) => [name, `index.html#by-${id}`] as const),
  ];
}
