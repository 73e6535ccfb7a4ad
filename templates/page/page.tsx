import type { ElementContent, Root } from 'hast';
import { pageWords } from '../../src/words/pages.ts';
import type { Content, Markup } from './markup.ts';
import { type FootParts, pageFoot } from './page-foot.tsx';
import { said } from './place.ts';
import { type HeadParts, siteHead } from './site-head.tsx';

export interface PageParts extends HeadParts, FootParts {
  readonly title: string;
  readonly description: string;
  /** Below `styles/`, besides that of the site. */
  readonly style?: string;
  /** Below `scripts/`, besides that of the search. */
  readonly scripts?: readonly string[];
  /** Below the mat, across the whole page. */
  readonly bar?: Content;
  readonly main: Content;
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
