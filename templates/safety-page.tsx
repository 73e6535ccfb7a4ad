import type { Root } from 'hast';
import type { ShownArticle } from '../src/showing/show-library.ts';
import { aboutHazards } from '../src/words/hazards.ts';
import { pageWords } from '../src/words/pages.ts';
import { planWords } from '../src/words/plan.ts';
import { type Content, type Markup, type Site, page } from './page.tsx';
import { part, scrolling } from './part.tsx';
import { plainHero } from './plain-hero.tsx';
import { alertSymbol } from './caution.tsx';

const { safety: words } = pageWords;
const signals = ['danger', 'warning', 'caution', 'notice'] as const;

export interface SafetyView {
  readonly site: Site;
  readonly policy?: { readonly contact?: string; readonly link?: string; readonly note?: string };
  /** Products and tools that can hurt, with the guides that use them. */
  readonly dangerous: readonly {
    readonly article: ShownArticle;
    readonly href: string;
    readonly guides: readonly { readonly title: string; readonly href: string }[];
  }[];
}

/** What comes first, what the signal words mean, and every product that can hurt. */
export function safetyPage(view: SafetyView): Root {
  return page({
    site: view.site,
    root: '../',
    title: words.title,
    description: words.lead,
    current: 'safety',
    hero: plainHero(words.title, words.lead),
    main: (
      <>
        {part('first', words.first, first(view))}
        {part('signals', words.signals, signalList(), <p>{words.signalsSay}</p>)}
        {part('hazards', words.hazards, hazards(view), <p>{words.hazardsSay}</p>)}
        {part('statements', words.about, statements())}
      </>
    ),
  });
}

function first({ policy }: SafetyView): Markup {
  return (
    <>
      <ol class="order">
        {words.order.map((line) => (
          <li>{line}</li>
        ))}
      </ol>
      {policy ? (
        <dl class="record">
          {policy.contact === undefined ? null : <dt>{words.contact}</dt>}
          {policy.contact === undefined ? null : <dd>{policy.contact}</dd>}
          {policy.link === undefined && policy.note === undefined ? null : <dt>{words.policy}</dt>}
          {policy.note === undefined ? null : <dd>{policy.note}</dd>}
          {policy.link === undefined ? null : (
            <dd>
              <a href={policy.link} rel="noreferrer">
                {policy.link}
              </a>
            </dd>
          )}
        </dl>
      ) : null}
    </>
  );
}

function signalList(): Markup {
  return (
    <ul class="cautions">
      {signals.map((signal) => (
        <li class={`caution signal-${signal}`}>
          <p class="signal">
            {signal === 'notice' ? null : alertSymbol()}
            <strong>{planWords.cautions.word[signal]}</strong>
          </p>
          <p class="hazard">{words.meanings[signal]}</p>
        </li>
      ))}
    </ul>
  );
}

function hazards({ dangerous }: SafetyView): Content {
  if (dangerous.length === 0) return <p>{words.none}</p>;
  return scrolling(
    words.hazards,
    <table class="hazards">
      <thead>
        <tr>
          <th scope="col">{words.product}</th>
          <th scope="col">{words.danger}</th>
          <th scope="col">{words.guides}</th>
        </tr>
      </thead>
      <tbody>
        {dangerous.map(({ article, href, guides }) => (
          <tr>
            <th scope="row">
              <a href={href}>{article.name.text}</a>
            </th>
            <td>{plainList(article.dangers.map(({ text }) => <>{text}</>))}</td>
            <td>{plainList(guides.map((guide) => <a href={guide.href}>{guide.title}</a>))}</td>
          </tr>
        ))}
      </tbody>
    </table>,
  );
}

function plainList(items: readonly Markup[]): Markup {
  return (
    <ul class="plain">
      {items.map((item) => (
        <li>{item}</li>
      ))}
    </ul>
  );
}

function statements(): Markup {
  return (
    <div class="prose">
      <p>{aboutHazards.source}</p>
      <p>{aboutHazards.limits}</p>
    </div>
  );
}
