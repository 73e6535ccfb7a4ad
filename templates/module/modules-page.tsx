import type { Element, Root } from 'hast';
import type { ShownModule } from '../../src/showing/module/show-module.ts';
import { moduleWords } from '../../src/words/modules.ts';
import { type Link, linkList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { part } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';
import { plainHero } from '../page/plain-hero.tsx';

const { index: words } = moduleWords;

export interface ModulesView {
  readonly site: Site;
  readonly modules: readonly ListedModule[];
  /** Which builds on which; absent where none does. */
  readonly order?: Element;
}

export interface ListedModule {
  readonly module: ShownModule;
  readonly href: string;
  readonly after: readonly Link[];
  readonly models: readonly Link[];
}

/** All modules, in the order in which they build on each other. */
export function modulesPage({ site, modules, order }: ModulesView): Root {
  return page({
    site,
    root: '../',
    title: words.title,
    description: words.lead,
    current: 'modules',
    style: 'modules.css',
    hero: plainHero(words.title, words.lead),
    main: (
      <>
        <ol class="modules">{modules.map(listed)}</ol>
        {order ? part('order', words.order, <figure>{order}</figure>, <p>{words.orderSays}</p>) : null}
      </>
    ),
  });
}

function listed({ module, href, after, models }: ListedModule): Markup {
  const facts = [
    [words.audience, module.audience.text],
    [words.booked, module.booked.text],
    [words.prepares, module.prepareTime.text],
  ] as const;
  return (
    <li class="module">
      <div>
        <h2>
          <a href={href} {...shows(module.title)} />
        </h2>
        {isSaid(module.summary) ? <p {...shows(module.summary)} /> : null}
      </div>
      <dl class="record">
        {facts
          .filter(([, value]) => value !== '')
          .map(([name, value]) => (
            <>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </>
          ))}
        {ways(words.after, after)}
        {ways(words.models, models)}
      </dl>
    </li>
  );
}

function ways(name: string, to: readonly Link[]): Content {
  if (to.length === 0) return null;
  return (
    <>
      <dt>{name}</dt>
      <dd>{linkList(to)}</dd>
    </>
  );
}
