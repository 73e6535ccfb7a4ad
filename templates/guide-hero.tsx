import { pageWords } from '../src/words/pages.ts';
import type { GuideView, PagePart } from './guide-page.tsx';
import type { Content, Markup } from './page.tsx';
import { isSaid, shows } from './place.ts';

/** What the page is, on the mat: title, purpose, level, the sheet to print, the figures, and the ways down the page. */
export function guideHero(view: GuideView, parts: readonly PagePart[]): Markup {
  const { guide, plan } = view;
  return (
    <div class="hero hero-guide">
      <div class="hero-title">
        <h1>
          <span {...shows(guide.title)} />
          {guide.level ? <span class="level" {...shows(guide.level.name)} /> : null}
        </h1>
        {isSaid(guide.summary) ? <p class="lead" {...shows(guide.summary)} /> : null}
        <p class="training-only">
          <strong {...shows(plan.trainingOnly)} />
        </p>
      </div>
      <div class="hero-side">
        {isSaid(guide.trains) ? (
          <p class="trains">
            <span>{pageWords.guide.trains}</span> <strong {...shows(guide.trains)} />
          </p>
        ) : null}
        {levelSwitch(view)}
        <p>
          <a class="button" href={view.sheetHref}>
            {pageWords.guide.benchSheet}
          </a>
        </p>
        {view.cutHref === undefined ? null : (
          <p>
            <a class="button quiet" href={view.cutHref}>
              {pageWords.guide.cutSheet}
            </a>
          </p>
        )}
      </div>
      {figures(view)}
      {ways(parts)}
    </div>
  );
}

function levelSwitch({ levels, guide }: GuideView): Content {
  if (levels.length === 0) return null;
  return (
    <nav class="levels" aria-label={pageWords.guide.levels}>
      <ul>
        {levels.map(({ id, name, href }) => (
          <li>
            <a href={href} aria-current={id === guide.level?.id ? 'page' : undefined}>
              {name}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function figures({ batch, plan }: GuideView): Markup {
  return (
    <dl class="figures">
      <div>
        <dt>{pageWords.catalogue.batch}</dt>
        <dd>{batch}</dd>
      </div>
      {plan.facts.map(({ id, name, value }) => (
        <div class={`figure-${id}`}>
          <dt {...shows(name)} />
          <dd {...shows(value)} />
        </div>
      ))}
    </dl>
  );
}

/** The ways down the page stand on the ruler at the foot of the mat. */
function ways(parts: readonly PagePart[]): Markup {
  return (
    <nav class="ways" aria-label={pageWords.pageNav}>
      <ul>
        {parts.map(({ id, name }) => (
          <li>
            <a href={`#${id}`}>{name}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
