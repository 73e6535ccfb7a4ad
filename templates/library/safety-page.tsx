import type { Root } from 'hast';
import type { ShownHazard, ShownMeeting } from '../../src/showing/safety/show-safety.ts';
import { aboutHazards } from '../../src/words/hazards.ts';
import { pageWords } from '../../src/words/pages.ts';
import { planWords } from '../../src/words/plan.ts';
import { registerWords } from '../../src/words/register.ts';
import type { Content, Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { named, part, scrolling } from '../page/part.tsx';
import { plainHero } from '../page/plain-hero.tsx';
import { alertSymbol } from '../page/caution.tsx';
import { tableHead } from '../page/table.tsx';

const { safety: words } = pageWords;
const signals = ['danger', 'warning', 'caution', 'notice'] as const;

export interface SafetyView {
  readonly site: Site;
  /** Everything that can hurt, with the way to the entry of a product or tool. */
  readonly hazards: readonly { readonly hazard: ShownHazard; readonly href?: string }[];
  /** The way to the same as a table. */
  readonly csv: string;
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

function first({ site: { policy } }: SafetyView): Markup {
  return (
    <>
      <ol class="ranks">
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

/** What comes first is said again at the group itself, since nobody reads a page from its top. */
function hazards({ hazards: all, site, csv }: SafetyView): Content {
  if (all.length === 0) return <p>{words.none}</p>;
  return (
    <>
      <p class="defers">{site.defers}</p>
      <p>
        <a href={csv}>{registerWords.file}</a>
      </p>
      {all.map(hazardEntry)}
    </>
  );
}

/** One product, tool or situation: what it can do, what its label says, its data sheet, and where it is met. */
function hazardEntry({ hazard, href }: SafetyView['hazards'][number]): Markup {
  const { name, dangers, label, precautions, dataSheet, link, met } = hazard;
  const { columns } = registerWords;
  return (
    <section class="danger-of" id={`hazard-${hazard.kind}-${hazard.id}`}>
      <h3>{href === undefined ? name : <a href={href}>{name}</a>}</h3>
      <dl class="record">
        {named(columns.dangers, plainList(dangers.map((text) => <>{text}</>)))}
        {label === '' ? null : named(columns.label, <>{label}</>)}
        {precautions.length === 0
          ? null
          : named(columns.precautions, plainList(precautions.map((text) => <>{text}</>)))}
        {dataSheet === '' ? null : named(columns.dataSheet, sheetLink(dataSheet, link))}
      </dl>
      {met.length === 0 ? (
        <p>{pageWords.materials.unused}</p>
      ) : (
        scrolling(`${name}: ${words.met}`, meetings(met))
      )}
    </section>
  );
}

function sheetLink(dated: string, link: string | undefined): Markup {
  if (link === undefined) return <>{dated}</>;
  return (
    <>
      <a href={link} rel="noreferrer">
        {pageWords.materials.dataSheet}
      </a>{' '}
      {dated}
    </>
  );
}

function meetings(met: readonly ShownMeeting[]): Markup {
  const { columns } = registerWords;
  return (
    <table class="hazards">
      {tableHead(words.met, columns.cautions, columns.controls)}
      <tbody>
        {met.map(({ title, folder, step, stepName, what, cautions, controls }) => (
          <tr>
            <th scope="row">
              {title}: <a href={`../guides/${folder}/index.html#step-${step}`}>{stepName}</a>
              {what === '' ? null : ` (${what})`}
            </th>
            <td>{plainList(cautions.map((text) => <>{text}</>))}</td>
            <td>{plainList(controls.map((text) => <>{text}</>))}</td>
          </tr>
        ))}
      </tbody>
    </table>
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
