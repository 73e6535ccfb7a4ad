import type { ElementContent, Root } from 'hast';
import type { JSX } from 'hastscript/jsx-runtime';
import type { Policy } from '../../src/core/model/program.ts';
import { pageWords } from '../../src/words/pages.ts';
import { pageFoot } from './page-foot.tsx';
import { siteHead } from './site-head.tsx';
import { said } from './place.ts';

export type Markup = JSX.Element;
/** Markup, or nothing where there is nothing to say. */
export type Content = Markup | null;
export type PlaceId = Exclude<keyof typeof pageWords.places, 'search'>;

/** What every page of an edition shares. */
export interface Site {
  readonly program: string;
  /** BCP 47. */
  readonly language: string;
  /** Those pages that there are, by their path from the edition's folder. */
  readonly places: readonly { readonly id: PlaceId; readonly path: string }[];
  /** Who has the last word, and whom to ask. */
  readonly defers: string;
  readonly policy?: Policy;
}

export interface PageParts {
  readonly site: Site;
  readonly title: string;
  readonly description: string;
  /** The way from the page's folder to the edition's: `../../`. */
  readonly root: string;
  readonly current?: PlaceId;
  readonly isDraft?: boolean;
  /** Below `styles/`, besides that of the site. */
  readonly style?: string;
  /** Below `scripts/`, besides that of the search. */
  readonly scripts?: readonly string[];
  /** Stands on the mat, with the page's one heading of level 1. */
  readonly hero: Content;
  /** Below the mat, across the whole page. */
  readonly bar?: Content;
  readonly main: Content;
  /** What the foot says of this page: its guide and version. */
  readonly of?: string;
}

/**
 * A whole page. First in its head stands what it may load: files of its own folder and nothing else; no script and no
 * style within the page, no frame, no form that sends.
 */
export function page(parts: PageParts): Root {
  const { site, title, description, root } = parts;
  return documentOf(
    site.language,
    root,
    <head>
      {securityPolicy()}
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{said(pageWords.title, { page: title, program: site.program })}</title>
      <meta name="description" content={description} />
      <meta name="color-scheme" content="light dark" />
      {['site.css', ...(parts.style === undefined ? [] : [parts.style])].map((name) => (
        <link rel="stylesheet" href={`${root}styles/${name}`} />
      ))}
      {['search.js', ...(parts.scripts ?? [])].map((name) => (
        <script src={`${root}scripts/${name}`} defer />
      ))}
    </head>,
    <body>
      <a class="skip" href="#content">
        {pageWords.skip}
      </a>
      {siteHead(parts)}
      {parts.bar ?? null}
      <main id="content" class="wrap" tabindex="-1">
        {parts.main}
      </main>
      {pageFoot(parts)}
    </body>,
  );
}

/** What a page may load; it stands before anything else that loads. */
export function securityPolicy(): Markup {
  const allowed = [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self'",
    "font-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ];
  return <meta http-equiv="Content-Security-Policy" content={allowed.join('; ')} />;
}

export function documentOf(language: string, root: string, head: Markup, body: Markup): Root {
  return {
    type: 'root',
    children: [
      { type: 'doctype' },
      (
        <html lang={language} data-root={root}>
          {head}
          {body}
        </html>
      ) as ElementContent,
    ],
  };
}
