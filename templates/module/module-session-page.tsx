import type { Root } from 'hast';
import type { ShownMatrix } from '../../src/showing/module/show-matrix.ts';
import type { ShownModel } from '../../src/showing/module/show-models.ts';
import type { ShownModule } from '../../src/showing/module/show-module.ts';
import type { ShownTeaching } from '../../src/showing/module/show-teaching.ts';
import type { ShownLife } from '../../src/showing/session/show-lives.ts';
import type { ShownCircuit, ShownModelNeed, ShownSession } from '../../src/showing/session/shown-session.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { ShownPlan } from '../../src/showing/shown/shown-plan.ts';
import { pageWords } from '../../src/words/pages.ts';
import { sessionWords } from '../../src/words/session.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { agendaTable } from './agenda-table.tsx';
import { blankFact, planFigure } from '../guide/guide-hero.tsx';
import { purchaseTable, worthKnowing } from '../guide/guide-materials.tsx';
import { guideSchedule } from '../guide/guide-schedule.tsx';
import { moduleCareful } from './module-careful.tsx';
import { matrixTable } from './module-matrix.tsx';
import { modelLives } from './model-lives.tsx';
import { moduleScoring } from './module-scoring.tsx';
import { type SessionFields, sessionFields } from './session-fields.tsx';
import { circuitTables, stationList } from './session-room.tsx';
import { type Link, linkList, textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import type { Site } from '../page/site.ts';
import { page } from '../page/page.tsx';
import { part, scrolling } from '../page/part.tsx';
import { blank, blanks, rowsOf, said, shows, where } from '../page/place.ts';
import { proseParts, type ProseSection } from '../page/prose-section.tsx';
import { type PagePart, partsThere, ways } from '../page/ways.tsx';

const { page: words, staffOnly } = teachingWords;

/** A module as instructors need it. It stands in the staff edition alone. */
export interface SessionView {
  readonly site: Site;
  readonly root: string;
  readonly module: ShownModule;
  readonly session: ShownSession;
  /** All models in one plan; absent where there are none. */
  readonly plan?: ShownPlan;
  /** How each model is looked after in the session. */
  readonly lives: readonly ShownLife[];
  readonly teaching: ShownTeaching;
  readonly matrix: ShownMatrix;
  readonly models: readonly ShownModel[];
  /** Dangers of what stands at the stations. */
  readonly room: readonly Shown[];
  /** Prose for instructors. */
  readonly sections: readonly ProseSection[];
  /** What the reader may set. */
  readonly fields: SessionFields;
  readonly sheets: readonly Link[];
  readonly files: readonly Link[];
  /** What plans all its models at once. */
  readonly command: string;
}

/** Who is where when, what is said, on what, how it is scored: all that it takes to run the session. */
export function sessionPage(view: SessionView): Root {
  const { site, root, module } = view;
  const parts = partsOf(view);
  return page({
    site,
    root,
    title: said(words.title, { module: module.title.text }),
    description: words.lead,
    current: 'modules',
    style: 'modules.css',
    scripts: ['session.js'],
    isDraft: module.status === 'draft',
    hero: hero(view, parts),
    bar: sessionFields(view.fields),
    main: <>{parts.map(({ markup }) => markup)}</>,
    of: [module.title.text, module.version.text].filter((text) => text !== '').join(', '),
  });
}

function partsOf(view: SessionView): readonly PagePart[] {
  const { session, teaching, matrix, lives } = view;
  return partsThere([
    ['careful', words.careful, moduleCareful(view)],
    ['people', words.people, people(session)],
    ['plan', words.plan, agenda(session)],
    ['timetable', words.timetable, timetable(session.circuits)],
    ['stations', words.rooms, stations(session)],
    ['models', words.models, modelsToMake(view)],
    ['lives', sessionWords.headings.lives, modelLives(session, lives)],
    ['matrix', words.matrix, part('matrix', words.matrix, scrolling(words.matrix, matrixTable(matrix)))],
    ['scoring', words.scoring, moduleScoring(teaching)],
    ['debrief', words.debrief, debrief(teaching)],
    ...proseParts(view.sections),
    ['to-buy', words.buy, onePlan(view)],
    ['when', pageWords.guide.when, view.plan ? guideSchedule({ plan: view.plan }) : null],
    ['files', words.files, files(view)],
  ]);
}

function hero({ module, session, sheets }: SessionView, parts: readonly PagePart[]): Markup {
  return (
    <div class="hero hero-guide">
      <div class="hero-title">
        <h1>
          <span {...shows(module.title)} />
          <span class="level">{words.forInstructors}</span>
        </h1>
        <p class="lead">{words.lead}</p>
        <p class="training-only">
          <strong>{pageWords.trainingOnly}</strong> <span>{staffOnly}</span>
        </p>
      </div>
      <div class="hero-side">
        <p>
          <a class="button" href="../index.html">
            {words.forTrainees}
          </a>
        </p>
        <nav class="to-print" aria-label={words.sheets}>
          <span>{words.sheets}</span>
          <ul>
            {sheets.map(({ name, href }) => (
              <li>
                <a href={href} data-carries="">
                  {name}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      </div>
      <dl class="figures">
        {session.facts.map(({ name, value }) => (
          <div>
            <dt {...shows(name)} />
            <dd {...shows(value)} />
          </div>
        ))}
      </dl>
      {ways(parts)}
    </div>
  );
}

function people({ people: kinds, instructors, notes }: ShownSession): Markup {
  return part(
    'people',
    words.people,
    <>
      <ul class="plain who">
        {kinds.map(({ says, as }) => (
          <li>
            <strong {...shows(says)} /> <span {...shows(as)} />
          </li>
        ))}
        <li>
          <strong {...shows(instructors.says)} />{' '}
          <span>
            {[sessionWords.facts.instructors, ...instructors.because.map(({ text }) => text)].join(': ')}
          </span>
        </li>
      </ul>
      <ul
        class="session-notes"
        {...rowsOf('session.notes', notes, (note) => <li {...shows(note)} />, blank)}
        {...where('session.notes', notes.length > 0)}
      />
    </>,
  );
}

function agenda({ agenda: items }: ShownSession): Content {
  if (items.length === 0) return null;
  return part('plan', words.plan, agendaTable(items), <p>{words.planSays}</p>);
}

function timetable(circuits: readonly ShownCircuit[]): Content {
  if (circuits.length === 0) return null;
  return part('timetable', words.timetable, circuitTables(circuits));
}

function stations({ stations: all }: ShownSession): Content {
  if (all.length === 0) return null;
  return part('stations', words.rooms, stationList(all));
}

function modelsToMake({ session: { models, tools }, command }: SessionView): Content {
  if (models.length === 0) return null;
  return part(
    'models',
    words.models,
    <>
      <table class="needs">
        <tbody {...rowsOf('session.models', models, modelRow, blankModel)} />
      </table>
      {tools.length > 0 ? (
        <ul class="kit tools-of">
          {tools.map(({ name, count }) => (
            <li>
              <span {...shows(name)} /> <span class="need" {...shows(count)} />
            </li>
          ))}
        </ul>
      ) : null}
      <p class="remark">
        {words.planThem} <code>{command}</code>
      </p>
    </>,
    <p>{words.modelsSay}</p>,
  );
}

/** What all models take together: the figures, and what to buy. */
function onePlan({ plan, root }: SessionView): Content {
  if (!plan) return null;
  const { dataRows, children } = rowsOf('facts', plan.facts, planFigure, blankFact);
  return part(
    'to-buy',
    words.buy,
    <div class="stack">
      <dl class="plan-figures" data-rows={dataRows}>
        {children}
      </dl>
      {purchaseTable({ plan, root })}
      {worthKnowing(plan)}
    </div>,
  );
}

function modelRow({ name, count, of, share, wears }: ShownModelNeed): Markup {
  return (
    <tr>
      <th scope="row" {...shows(name)} />
      <td class="total" {...shows(count)} />
      <td>
        <span {...shows(of)} />
        <strong class="wears" {...shows(wears)} />
        <span class="note" {...shows(share)} />
      </td>
    </tr>
  );
}

function blankModel(key: string): ShownModelNeed {
  return { guide: '', parts: [], ...blanks('name', 'count', 'of', 'share', 'wears')(key) };
}

function debrief({ debrief: prompts }: ShownTeaching): Content {
  if (prompts.length === 0) return null;
  return part('debrief', words.debrief, textList(prompts, 'prompts'));
}

function files({ files: all }: SessionView): Content {
  if (all.length === 0) return null;
  return part('files', words.files, linkList(all));
}
