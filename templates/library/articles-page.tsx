import type { Root } from 'hast';
import type { ShownArticle, ShownPack } from '../../src/showing/library/show-library.ts';
import { pageWords } from '../../src/words/pages.ts';
import { type Link, linkList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { named, scrolling } from '../page/part.tsx';
import { plainHero } from '../page/plain-hero.tsx';
import { isSaid } from '../page/place.ts';
import { tableHead } from '../page/table.tsx';

const { materials: words } = pageWords;

/** A material or tool with the guides that use it. */
export interface ArticleInUse {
  readonly article: ShownArticle;
  readonly usedIn: readonly Link[];
}

/** All materials, or all tools, by name. Each has an anchor: `#material-felt`. */
export function articlesPage(
  site: Site,
  kind: 'materials' | 'tools',
  articles: readonly ArticleInUse[],
): Root {
  const { title, lead } = pageWords[kind];
  return page({
    site,
    root: '../',
    title,
    description: lead,
    current: kind,
    hero: plainHero(title, lead),
    main: (
      <>
        {register(anchorOf(kind), articles, title)}
        <p class="defers">{site.defers}</p>
        {articles.map(({ article, usedIn }) => entry(kind, article, usedIn))}
      </>
    ),
  });
}

const anchorOf = (kind: 'materials' | 'tools'): string => (kind === 'materials' ? 'material' : 'tool');

/** All names at the head, as the register of a book. */
function register(anchor: string, articles: readonly ArticleInUse[], title: string): Markup {
  return (
    <nav class="register" aria-label={title}>
      <ul>
        {articles.map(({ article: { id, name } }) => (
          <li>
            <a href={`#${anchor}-${id}`}>{name.text}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function entry(kind: 'materials' | 'tools', article: ShownArticle, usedIn: ArticleInUse['usedIn']): Markup {
  const id = `${anchorOf(kind)}-${article.id}`;
  return (
    <section class="part article" id={id} aria-labelledby={`${id}-head`}>
      <div class="part-head">
        <h2 id={`${id}-head`}>{article.name.text}</h2>
      </div>
      <div class="part-body">
        {mustBe(article)}
        {dangers(article)}
        {packs(kind, article)}
        {facts(article, usedIn, kind)}
      </div>
    </section>
  );
}

function mustBe({ must }: ShownArticle): Content {
  if (must.length === 0) return null;
  return (
    <p class="must-be">
      <span>{words.must}</span> {must.map(({ text }) => text).join(', ')}
    </p>
  );
}

function dangers({ dangers: known, label, precautions, dataSheet }: ShownArticle): Content {
  if (known.length + precautions.length === 0) return null;
  return (
    <div class="named-list meets">
      <h3>{words.dangers}</h3>
      <ul>
        {known.map(({ text }) => (
          <li>{text}</li>
        ))}
      </ul>
      {isSaid(label) ? (
        <p>
          {label.text} {words.labelSay}
        </p>
      ) : null}
      {precautions.length === 0 ? null : <h3>{words.precautions}</h3>}
      {precautions.length === 0 ? null : (
        <ul>
          {precautions.map(({ text }) => (
            <li>{text}</li>
          ))}
        </ul>
      )}
      {dataSheet ? (
        <p>
          {linked(words.dataSheet, dataSheet.link)} {dataSheet.dated.text}
        </p>
      ) : null}
    </div>
  );
}

function packs(kind: 'materials' | 'tools', { packs: sold, free, name }: ShownArticle): Content {
  if (kind === 'tools') return null;
  if (sold.length === 0) return <p>{free ? words.free : words.noPacks}</p>;
  return scrolling(
    `${name.text}: ${words.packs}`,
    <table class="packs">
      {tableHead(words.holds, [words.price, 'end'], words.priced, words.from, words.arrives)}
      <tbody>{sold.map(packRow)}</tbody>
    </table>,
  );
}

function packRow({ holds, price, priced, from, arrives }: ShownPack): Markup {
  return (
    <tr>
      <th scope="row">{holds.text}</th>
      <td class="end price">{price.text}</td>
      <td data-of={words.priced}>{priced.text}</td>
      <td data-of={words.from}>{from.text}</td>
      <td data-of={words.arrives}>{arrives.text}</td>
    </tr>
  );
}

function facts(article: ShownArticle, usedIn: ArticleInUse['usedIn'], kind: 'materials' | 'tools'): Markup {
  const { directions, notWith, instead } = article;
  return (
    <dl class="record">
      {article.facts.map(({ name, value }) => named(name.text, <>{value.text}</>))}
      {directions ? named(words.directions, directionsOf(directions)) : null}
      {notWith.length > 0
        ? named(
            words.notWith,
            linkList(notWith.map(({ id, name }) => ({ name: name.text, href: `#material-${id}` }))),
          )
        : null}
      {instead.length > 0 ? named(words.instead, insteadOf(instead)) : null}
      {named(words.usedIn, usedIn.length === 0 ? <>{pageWords[kind].unused}</> : linkList(usedIn))}
    </dl>
  );
}

function directionsOf({ says, link }: NonNullable<ShownArticle['directions']>): Markup {
  if (link === undefined) return <>{says.text}</>;
  return isSaid(says) ? (
    <>
      {says.text} {linked(words.directions, link)}
    </>
  ) : (
    linked(words.directions, link)
  );
}

function insteadOf(instead: ShownArticle['instead']): Markup {
  return (
    <ul class="plain">
      {instead.map(({ id, name, says }) => (
        <li>
          <a href={`#material-${id}`}>{name.text}</a>: {says.text}
        </li>
      ))}
    </ul>
  );
}

/** A link that leaves the site, or its words alone. */
function linked(text: string, link: string | undefined): Markup {
  if (link === undefined) return <span>{text}</span>;
  return (
    <a href={link} rel="noreferrer">
      {text}
    </a>
  );
}
