import type { Root } from 'hast';
import type { ShownGuide } from '../../src/showing/library/show-guide.ts';
import type { ShownCatalogue, ShownEntry } from '../../src/showing/shown/shown-catalogue.ts';
import { catalogueWords as words } from '../../src/words/catalogue.ts';
import { catalogueChoices, catalogueOrder } from './catalogue-choices.tsx';
import type { Link } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { plainHero } from '../page/plain-hero.tsx';
import { isSaid, said } from '../page/place.ts';

/** A guide as the catalogue lists it: at its usual level, for the batch that is published. */
export interface Listed {
  readonly guide: ShownGuide;
  readonly href: string;
  readonly batch: string;
  readonly entry: ShownEntry;
  readonly levels: readonly Link[];
}

/** All guides with their figures; a script brings the choices beside them to life. */
export function cataloguePage(
  site: Site,
  guides: readonly Listed[],
  catalogue: ShownCatalogue,
  count: string,
): Root {
  return page({
    site,
    root: '',
    title: words.title,
    description: words.lead,
    current: 'guides',
    scripts: ['catalogue.js'],
    hero: plainHero(words.title, words.lead),
    main: guides.length === 0 ? <p class="nothing">{words.empty}</p> : choosable(guides, catalogue, count),
  });
}

function choosable(guides: readonly Listed[], catalogue: ShownCatalogue, count: string): Markup {
  return (
    <div class="catalogue" data-catalogue="">
      {catalogueChoices(catalogue)}
      <div class="catalogue-list">
        <div class="catalogue-head">
          <p role="status" class="match">
            {count}
          </p>
          {catalogueOrder()}
        </div>
        <div class="no-match" hidden="">
          <p>{words.noneWay}</p>
          <ul />
        </div>
        <ol class="guides">{guides.map(row)}</ol>
        <p class="remark">{`${words.says} ${said(words.scale, { longest: catalogue.longest.text })}`}</p>
      </div>
    </div>
  );
}

function row({ guide, href, batch, entry, levels }: Listed): Markup {
  const { columns } = words;
  return (
    <li class="guide-row" data-has={entry.has} data-ranks={JSON.stringify(entry.ranks)}>
      <div class="guide-head">
        <h2>
          <a class="guide-name" href={href}>
            {guide.title.text}
          </a>
        </h2>
        {guide.status === 'draft' ? <span class="tag">{words.draft}</span> : null}
        {isSaid(guide.trains) ? <p class="purpose">{guide.trains.text}</p> : null}
        {levelList(levels)}
      </div>
      <dl class="guide-figures">
        {figure('cost', columns.cost, entry.cost.text)}
        {figure('build', columns.build, entry.build.text)}
        {figure('hands', columns.handsOn, entry.handsOn.text)}
        {figure('batch', columns.batch, batch)}
        {isSaid(entry.keeps) ? figure('keeps', columns.keeps, entry.keeps.text) : null}
      </dl>
      {timeRule(entry)}
    </li>
  );
}

function levelList(levels: Listed['levels']): Content {
  if (levels.length === 0) return null;
  return (
    <p class="level-list">
      {`${words.levels}: `}
      {levels.map(({ name, href }) => (
        <a href={href}>{name}</a>
      ))}
    </p>
  );
}

function figure(kind: string, name: string, value: string): Markup {
  return (
    <div class={`of-${kind}`}>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

/** The rule below a guide carries its build time, on one scale for all; the figures above say the same. */
function timeRule({ span }: ShownEntry): Markup {
  return (
    <svg class="time-rule" viewBox="0 0 1000 8" preserveAspectRatio="none" aria-hidden="true">
      {span ? <rect class="waits" y="5" width={span.build} height="3" /> : null}
      {span ? <rect class="hands" width={span.handsOn} height="8" /> : null}
    </svg>
  );
}
