import type { Root } from 'hast';
import { pageWords } from '../src/words/pages.ts';
import { type Site, page } from './page.tsx';
import { plainHero } from './plain-hero.tsx';

const { find: words } = pageWords;

/** Where the search field leads: all that was found. Without scripts, the ways to the pages that list everything. */
export function searchPage(site: Site): Root {
  return page({
    site,
    root: '../',
    title: words.title,
    description: words.label,
    hero: plainHero(words.title),
    main: (
      <section class="search-page" data-search-page="" aria-label={words.all}>
        <p role="status" class="found-says" />
        <ol class="found-list" />
        <div class="search-help">
          <noscript>
            <p>{words.needsScript}</p>
          </noscript>
          <ul class="plain">
            {site.places.map(({ id, path }) => (
              <li>
                <a href={`../${path}`}>{pageWords.places[id]}</a>
              </li>
            ))}
          </ul>
        </div>
      </section>
    ),
  });
}
