import type { Root } from 'hast';
import type { ShownGuide } from '../src/showing/show-guide.ts';
import type { ShownFact, ShownLine, ShownPlan } from '../src/showing/shown.ts';
import { pageWords } from '../src/words/pages.ts';
import { type Content, type Markup, type Site, page } from './page.tsx';
import { plainHero } from './plain-hero.tsx';
import { isSaid } from './place.ts';

const { catalogue: words } = pageWords;

/** A guide as the catalogue lists it: at its usual level, for the batch that is published. */
export interface Listed {
  readonly guide: ShownGuide;
  readonly href: string;
  readonly plan: ShownPlan;
  readonly line: ShownLine;
  readonly batch: string;
  readonly levels: readonly { readonly id: string; readonly name: string; readonly href: string }[];
}

/** All guides with what one model costs and how long a batch takes. */
export function cataloguePage(site: Site, guides: readonly Listed[]): Root {
  return page({
    site,
    root: '',
    title: words.title,
    description: words.lead,
    current: 'guides',
    hero: plainHero(words.title, words.lead),
    main: guides.length === 0 ? <p class="nothing">{words.none}</p> : table(guides),
  });
}

function table(guides: readonly Listed[]): Markup {
  return (
    <div class="catalogue">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.guide}</th>
            <th scope="col">{words.batch}</th>
            <th scope="col">{words.usedEach}</th>
            <th scope="col">{words.buildTime}</th>
            <th scope="col">{words.handsOn}</th>
            <th scope="col">{words.keeps}</th>
          </tr>
        </thead>
        <tbody>{guides.map(row)}</tbody>
      </table>
      <p class="remark">{words.says}</p>
    </div>
  );
}

function row({ guide, href, plan, line, batch, levels }: Listed): Markup {
  return (
    <tr>
      <th scope="row">
        <span class="guide-head">
          <a class="guide-name" href={href}>
            {guide.title.text}
          </a>
          {guide.status === 'draft' ? <span class="tag">{words.draft}</span> : null}
        </span>
        {isSaid(guide.trains) ? <span class="purpose">{guide.trains.text}</span> : null}
        {levelList(levels)}
      </th>
      {figure(words.batch, batch)}
      {figure(words.usedEach, valueOf(line.facts, 'used-each'))}
      {figure(words.buildTime, valueOf(plan.facts, 'build-time'))}
      {figure(words.handsOn, valueOf(plan.facts, 'hands-on'))}
      <td class="keeps" data-of={words.keeps}>
        {valueOf(line.facts, 'keeps')}
      </td>
    </tr>
  );
}

function levelList(levels: Listed['levels']): Content {
  if (levels.length === 0) return null;
  return (
    <span class="level-list">
      {`${words.levels}: `}
      {levels.map(({ name, href }) => (
        <a href={href}>{name}</a>
      ))}
    </span>
  );
}

function figure(name: string, value: string): Markup {
  return (
    <td class="figure" data-of={name}>
      {value}
    </td>
  );
}

function valueOf(facts: readonly ShownFact[], id: ShownFact['id']): string {
  return facts.find((fact) => fact.id === id)?.value.text ?? '';
}
