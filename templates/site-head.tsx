import { pageWords } from '../src/words/pages.ts';
import type { Markup, PageParts } from './page.tsx';

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
          {findField()}
        </div>
        {hero}
      </div>
    </header>
  );
}

/** The search field; a script brings it to life, so without scripts it stays out of sight and keeps its room. */
function findField(): Markup {
  return (
    <form class="find" role="search" data-find="" hidden="">
      <label class="unseen" for="find">
        {pageWords.find.label}
      </label>
      <input
        id="find"
        type="search"
        name="q"
        autocomplete="off"
        spellcheck="false"
        enterkeyhint="search"
        placeholder={pageWords.find.placeholder}
        aria-controls="found"
      />
      <button type="submit">{pageWords.find.button}</button>
      <div id="found" class="found" hidden="">
        <p role="status" class="found-says" />
        <ul class="found-list" />
      </div>
    </form>
  );
}
