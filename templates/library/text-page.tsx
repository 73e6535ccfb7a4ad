import type { ElementContent, Root } from 'hast';
import { pageWords } from '../../src/words/pages.ts';
import type { Link } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { plainHero } from '../page/plain-hero.tsx';

/** A page of the manual. */
export interface TextView {
  readonly site: Site;
  readonly root: string;
  readonly title: string;
  readonly content: readonly ElementContent[];
  /** Its headings of level 2. */
  readonly headings: readonly { readonly id: string; readonly text: string }[];
  /** All pages of the manual. */
  readonly pages: readonly (Link & { readonly isThis: boolean })[];
}

/** Plain text with the pages of the manual beside it. */
export function textPage(view: TextView): Root {
  const { site, root, title, content } = view;
  return page({
    site,
    root,
    title,
    description: `${pageWords.places.manual}: ${title}`,
    current: 'manual',
    hero: plainHero(title),
    main: (
      <div class="text-page">
        {pageList(view)}
        <article class="prose">{[...content]}</article>
      </div>
    ),
  });
}

function pageList({ pages, headings }: TextView): Markup {
  return (
    <nav class="pages" aria-label={pageWords.places.manual}>
      <ul>
        {pages.map(({ name, href, isThis }) => (
          <li>
            <a href={href} aria-current={isThis ? 'page' : undefined}>
              {name}
            </a>
            {isThis ? below(headings) : null}
          </li>
        ))}
      </ul>
    </nav>
  );
}

function below(headings: TextView['headings']): Content {
  if (headings.length === 0) return null;
  return (
    <ul>
      {headings.map(({ id, text }) => (
        <li>
          <a href={`#${id}`}>{text}</a>
        </li>
      ))}
    </ul>
  );
}
