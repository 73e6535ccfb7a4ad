import type { Root } from 'hast';
import { pageWords } from '../../src/words/pages.ts';
import { searchWords as words } from '../../src/words/search.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { plainHero } from '../page/plain-hero.tsx';

/** Where the search field leads: all that was found. Without scripts, the ways to the pages that list everything. */
export function searchPage(site: Site): Root {
  return page({
    site,
    root: '../',
    title: words.title,
    description: words.lead,
    hero: plainHero(words.title, words.lead),
    main: (
      <section class="search-page" data-search-page="" aria-label={words.all}>
        <p role="status" class="found-says" />
        <div class="found-results" />
        <noscript>
          <p>{words.needsScript}</p>
          <ul class="plain">
            {site.places.map(({ id, path }) => (
              <li>
                <a href={`../${path}`}>{pageWords.places[id]}</a>
              </li>
            ))}
          </ul>
        </noscript>
      </section>
    ),
  });
}
