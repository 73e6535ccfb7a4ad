import type { ElementContent, Root } from 'hast';
import type { ShownModel } from '../../src/showing/module/show-models.ts';
import type { ShownModule, ShownObjective, ShownQuestion } from '../../src/showing/module/show-module.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import { moduleWords } from '../../src/words/modules.ts';
import { pageWords } from '../../src/words/pages.ts';
import { recordOf } from '../guide/guide-record.tsx';
import { moduleCareful } from './module-careful.tsx';
import { modulePrepare } from './module-prepare.tsx';
import { type Link, linkList, textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { part } from '../page/part.tsx';
import { isSaid, shows } from '../page/place.ts';
import { proseBlock, proseParts, type ProseSection } from '../page/prose-section.tsx';
import { type PagePart, partsThere, ways } from '../page/ways.tsx';

const { trainee: words } = moduleWords;

/** A module as trainees read it: everything that they may see, and nothing else. */
export interface ModuleView {
  readonly site: Site;
  readonly root: string;
  readonly module: ShownModule;
  /** What happens, in its order; empty where there is no agenda. */
  readonly day: readonly { readonly what: Shown; readonly takes: Shown }[];
  readonly models: readonly (ShownModel & { readonly href: string })[];
  /** Dangers of what stands at the stations. */
  readonly room: readonly Shown[];
  /** Modules that come before, with the way to them. */
  readonly after: readonly Link[];
  /** Prose for everybody. */
  readonly sections: readonly ProseSection[];
  readonly handOut: string;
  /** The instructors' page; absent from the trainees' edition. */
  readonly staffHref?: string;
  /** Ready to stand in a script element. */
  readonly jsonLd?: string;
}

/**
 * One page for the evening before: what, where, how long, what to bring and read, what to be careful of, how it is
 * judged. Written for a phone.
 */
export function modulePage(view: ModuleView): Root {
  const { site, root, module } = view;
  const parts = partsOf(view);
  return page({
    site,
    root,
    title: module.title.text,
    description: module.summary.text || module.title.text,
    current: 'modules',
    style: 'modules.css',
    isDraft: module.status === 'draft',
    hero: hero(view, parts),
    main: (
      <>
        {parts.map(({ markup }) => markup)}
        {view.jsonLd === undefined ? null : <script type="application/ld+json">{view.jsonLd}</script>}
      </>
    ),
    of: [module.title.text, module.version.text].filter((text) => text !== '').join(', '),
  });
}

/** Prose under the heading of a part stands in that part; what the preparation names, below it; the rest on its own. */
function partsOf(view: ModuleView): readonly PagePart[] {
  const { module, sections } = view;
  const under = (heading: string): readonly ElementContent[] =>
    sections.filter((section) => section.heading === heading).flatMap(({ content }) => content);
  const toRead = new Set(module.prepare.flatMap(({ section }) => (section ? [`text-${section}`] : [])));
  const taken: readonly string[] = ['', words.judged, words.models];
  const free = sections.filter(({ id, heading }) => !toRead.has(id) && !taken.includes(heading));
  return partsThere([
    ['careful', words.careful, moduleCareful(view, words.carefulSays)],
    ['about', words.about, about(under(''))],
    ['aims', words.aims, aims(module)],
    [
      'prepare',
      words.prepare,
      modulePrepare(
        module,
        sections.filter(({ id }) => toRead.has(id)),
      ),
    ],
    ['day', words.day, day(view)],
    ['models', words.models, models(view, under(words.models))],
    ['judged', words.judged, judged(module, under(words.judged))],
    ['self-check', words.selfCheck, selfCheck(module.selfCheck)],
    ['notices', words.notices, notices(module)],
    ...proseParts(free),
    ['record', words.record, record(view)],
  ]);
}

function hero(view: ModuleView, parts: readonly PagePart[]): Markup {
  const { module, handOut, staffHref } = view;
  return (
    <div class="hero hero-guide">
      <div class="hero-title">
        <h1 {...shows(module.title)} />
        {isSaid(module.summary) ? <p class="lead" {...shows(module.summary)} /> : null}
        <p class="training-only">
          <strong>{pageWords.trainingOnly}</strong>
        </p>
      </div>
      <div class="hero-side">
        {isSaid(module.audience) ? (
          <p class="trains">
            <span>{words.audience}</span> <strong {...shows(module.audience)} />
          </p>
        ) : null}
        <p>
          <a class="button" href={handOut}>
            {words.handOut}
          </a>
        </p>
        {staffHref === undefined ? null : (
          <p>
            <a href={staffHref}>{words.forStaff}</a>
          </p>
        )}
      </div>
      {figures(module)}
      {ways(parts)}
    </div>
  );
}

function figures({ booked, where, prepareTime, stations }: ShownModule): Markup {
  const facts = [
    [words.figures.booked, booked.text],
    [words.figures.where, where.text],
    [words.figures.prepare, prepareTime.text],
    [words.figures.stations, stations.length === 0 ? '' : String(stations.length)],
  ] as const;
  return (
    <dl class="figures">
      {facts
        .filter(([, value]) => value !== '')
        .map(([name, value]) => (
          <div>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
    </dl>
  );
}

function about(content: readonly ElementContent[]): Content {
  return content.length === 0 ? null : part('about', words.about, proseBlock(content));
}

function aims({ objectives }: ShownModule): Content {
  if (objectives.length === 0) return null;
  return part('aims', words.aims, <ol class="aims">{objectives.map(aim)}</ol>);
}

function aim({ id, does, howWell, means }: ShownObjective): Markup {
  return (
    <li id={`objective-${id}`}>
      <strong {...shows(does)} />
      {[howWell, means].filter(isSaid).map((text) => (
        <span {...shows(text)} />
      ))}
    </li>
  );
}

function day({ day: items, module: { stations } }: ModuleView): Content {
  if (items.length === 0) return null;
  return part(
    'day',
    words.day,
    <>
      <ol class="day">
        {items.map(({ what, takes }) => (
          <li>
            <span {...shows(what)} />
            <span class="takes" {...shows(takes)} />
          </li>
        ))}
      </ol>
      {stations.length > 1 ? (
        <>
          <h3>{words.stations}</h3>
          <ul class="day">
            {stations.map(({ name, takes }) => (
              <li>
                <span {...shows(name)} />
                <span class="takes" {...shows(takes)} />
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </>,
  );
}

function models({ models: all }: ModuleView, content: readonly ElementContent[]): Content {
  if (all.length + content.length === 0) return null;
  return part(
    'models',
    words.models,
    <>
      {content.length > 0 ? proseBlock(content) : <p>{words.modelsSay}</p>}
      <ul class="model-list">
        {all.map(({ title, level, trains, href }) => (
          <li>
            <a href={href} {...shows(title)} />
            {level ? <span class="level" {...shows(level)} /> : null}
            {isSaid(trains) ? <span {...shows(trains)} /> : null}
          </li>
        ))}
      </ul>
    </>,
  );
}

function judged({ judged: sentences }: ShownModule, content: readonly ElementContent[]): Markup {
  return part(
    'judged',
    words.judged,
    <>
      {content.length > 0 ? proseBlock(content) : null}
      {textList(sentences, 'plain')}
    </>,
  );
}

function selfCheck(questions: readonly ShownQuestion[]): Content {
  if (questions.length === 0) return null;
  return part(
    'self-check',
    words.selfCheck,
    <ol class="questions">
      {questions.map(({ ask, choices, answer }) => (
        <li>
          <strong {...shows(ask)} />
          <ol class="choices-of">
            {choices.map((choice) => (
              <li {...shows(choice)} />
            ))}
          </ol>
          <details>
            <summary>
              {words.answer}
              <span class="unseen"> {ask.text}</span>
            </summary>
            <p {...shows(answer)} />
          </details>
        </li>
      ))}
    </ol>,
    <p>{words.selfCheckSays}</p>,
  );
}

function notices({ notices: all }: ShownModule): Content {
  if (all.length === 0) return null;
  return part(
    'notices',
    words.notices,
    <dl class="record">
      {all.map(({ name, says }) => (
        <>
          <dt {...shows(name)} />
          <dd {...shows(says)} />
        </>
      ))}
    </dl>,
  );
}

function record({ module, after }: ModuleView): Markup {
  const more = (
    <>
      {after.length > 0 ? <dt>{words.after}</dt> : null}
      {after.length > 0 ? <dd>{linkList(after)}</dd> : null}
      {module.needs.length > 0 ? <dt>{words.needs}</dt> : null}
      {module.needs.map((need) => (
        <dd {...shows(need)} />
      ))}
      {isSaid(module.pilot) ? <dt>{words.pilot}</dt> : null}
      {isSaid(module.pilot) ? <dd {...shows(module.pilot)} /> : null}
    </>
  );
  return part('record', words.record, recordOf(module, more));
}
