import type { ShownFact } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { plannerWords } from '../../src/words/planner.ts';
import type { GuideView } from './guide-view.ts';
import type { Content, Markup } from '../page/markup.ts';
import { blanks, isSaid, rowsOf, shows } from '../page/place.ts';
import { type PagePart, ways } from '../page/ways.tsx';

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
          <a class="button" href={view.sheetHref} data-to-sheet="">
            {pageWords.guide.benchSheet}
          </a>
        </p>
        {toPrint(view)}
        <p class="sheets-of" data-if-changed="" hidden>
          {plannerWords.sheets}
        </p>
      </div>
      {figures(view)}
      {ways(parts)}
    </div>
  );
}

/** The other sheets: what to order, to cut by, to stick on, to file. */
function toPrint({ sheets = [], sheetHref }: GuideView): Content {
  const others = sheets.filter(({ href }) => href !== sheetHref);
  if (others.length === 0) return null;
  return (
    <nav class="to-print" aria-label={pageWords.guide.toPrint}>
      <span>{pageWords.guide.toPrint}</span>
      <ul>
        {others.map(({ name, href }) => (
          <li>
            <a href={href} data-to-sheet="">
              {name}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function levelSwitch({ levels, guide }: GuideView): Content {
  if (levels.length === 0) return null;
  return (
    <nav class="levels" aria-label={pageWords.guide.levels}>
      <ul>
        {levels.map(({ id, name, href }) => (
          <li>
            <a href={href} data-to-level={id} aria-current={id === guide.level?.id ? 'page' : undefined}>
              {name}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function figures({ line, plan }: GuideView): Markup {
  const { dataRows, children } = rowsOf('facts', plan.facts, planFigure, blankFact);
  return (
    <dl class="figures" data-rows={dataRows}>
      <div class="figure-batch" data-stays="">
        <dt>{pageWords.catalogue.batch}</dt>
        <dd {...shows(line.models)} />
      </div>
      {children}
    </dl>
  );
}

export function planFigure({ id, name, value }: ShownFact): Markup {
  return (
    <div class={`figure-${id}`}>
      <dt {...shows(name)} />
      <dd {...shows(value)} />
    </div>
  );
}

export function blankFact(key: string): ShownFact {
  return { id: '{id}' as ShownFact['id'], ...blanks('name', 'value')(key) };
}
