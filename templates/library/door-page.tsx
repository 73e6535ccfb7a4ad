import type { Root } from 'hast';
import { pageWords } from '../../src/words/pages.ts';
import type { Site } from '../page/site.ts';
import { documentOf, securityPolicy } from '../page/page.tsx';
import { said } from '../page/place.ts';

const { door: words } = pageWords;

/** The first file that somebody opens in the published folder: which edition is for whom. */
export function doorPage(
  { program, language, defers }: Pick<Site, 'program' | 'language' | 'defers'>,
  editions: readonly ('trainees' | 'staff')[],
): Root {
  const title = said(words.title, { program });
  const first = editions[0] ?? 'trainees';
  return documentOf(
    language,
    '',
    <head>
      {securityPolicy()}
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{title}</title>
      <meta name="color-scheme" content="light dark" />
      <link rel="stylesheet" href={`${first}/styles/site.css`} />
    </head>,
    <body class="door">
      <header class="mat">
        <div class="wrap">
          <div class="hero">
            <div class="hero-title">
              <h1>{program}</h1>
            </div>
          </div>
        </div>
      </header>
      <main class="wrap">
        <ul class="editions">
          {editions.map((edition) => (
            <li>
              <a href={`${edition}/index.html`}>{words[edition]}</a>
              <p>{words[`${edition}Say`]}</p>
            </li>
          ))}
        </ul>
      </main>
      <footer class="foot">
        <div class="wrap">
          <p class="training-only">{pageWords.trainingOnly}</p>
          <p>{defers}</p>
        </div>
      </footer>
    </body>,
  );
}
