import { pageWords } from '../../src/words/pages.ts';
import type { Content, Markup } from './markup.ts';
import { searchField } from './search-field.tsx';
import type { PlaceId, Site } from './site.ts';

export interface HeadParts {
  readonly site: Site;
  /** The way from the page's folder to the edition's: `../../`. */
  readonly root: string;
  readonly current?: PlaceId;
  readonly isDraft?: boolean;
  /** Stands on the mat, with the page's one heading of level 1. */
  readonly hero: Content;
}

/** The mat at the head of each page: program, ways to the other pages, search, and what the page is. */
export function siteHead({ site, root, current, isDraft, hero }: HeadParts): Markup {
  return (
    <header class="mat">
      {isDraft ? <p class="draft">{pageWords.draft}</p> : null}
      <div class="wrap">
        <div class="top">
          <a class="program" href={`${root}index.html`}>
            {site.program}
          </a>
          <nav class="places" aria-label={pageWords.mainNav}>
            <ul>
              {site.places.map(({ id, path }) => (
                <li>
                  <a href={`${root}${path}`} aria-current={id === current ? 'page' : undefined}>
                    {pageWords.places[id]}
                  </a>
                </li>
              ))}
            </ul>
          </nav>
          {searchField()}
        </div>
        {hero}
      </div>
    </header>
  );
}
