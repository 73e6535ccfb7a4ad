import { pageWords } from '../../src/words/pages.ts';
import type { Markup, PageParts } from './page.tsx';
import { searchField } from './search-field.tsx';

/** The mat at the head of each page: program, ways to the other pages, search, and what the page is. */
export function siteHead({ site, root, current, isDraft, hero }: PageParts): Markup {
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
