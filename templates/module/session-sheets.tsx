import type { Root } from 'hast';
import type { ShownMatrix } from '../../src/showing/module/show-matrix.ts';
import type { ShownModel } from '../../src/showing/module/show-models.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { ShownTeaching } from '../../src/showing/module/show-teaching.ts';
import type { ShownSession } from '../../src/showing/session/shown-session.ts';
import { moduleWords } from '../../src/words/modules.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { agendaToTick } from './agenda-table.tsx';
import { matrixTable } from './module-matrix.tsx';
import {
  type ModuleSheetFacts,
  defersLine,
  moduleSheet,
  moduleSheetHead,
  sheetPart,
} from './module-sheet.tsx';
import { textList } from '../page/lists.tsx';
import type { Content, Markup } from '../page/markup.ts';
import { scrolling } from '../page/part.tsx';
import { blank, blanks, rowsOf, shows } from '../page/place.ts';
import { circuitTables, stationList } from './session-room.tsx';
import { box } from '../sheets/sheet-frame.tsx';

const { sheets: titles, page: words, plan } = teachingWords;

export interface SessionSheetView extends ModuleSheetFacts {
  readonly session: ShownSession;
  readonly teaching: ShownTeaching;
  readonly models: readonly ShownModel[];
  /** Dangers of what stands at the stations. */
  readonly room: readonly Shown[];
}

/** The sheet in the instructor's hand: what happens when, what is said, what stands ready, what is asked at the end. */
export function sessionPlanSheet(view: SessionSheetView): Root {
  const { session, teaching } = view;
  return moduleSheet(view, {
    id: 'session-plan',
    follows: true,
    defersWithin: isCareful(view),
    main: (
      <>
        {moduleSheetHead(view, titles['session-plan'], [plan.date, plan.room, plan.lead, plan.begins])}
        {facts(session)}
        {isCareful(view) ? sheetPart(words.careful, careful(view)) : null}
        {sheetPart(
          words.people,
          textList([...session.people.map(({ says }) => says), session.instructors.says], 'plain'),
        )}
        <ul
          class="session-notes"
          {...rowsOf('session.notes', session.notes, (note) => <li {...shows(note)} />, blank)}
        />
        {session.agenda.length > 0
          ? sheetPart(words.plan, agendaToTick(session.agenda), 'agenda-part')
          : null}
        {session.models.length > 0 ? sheetPart(words.ready, ready(session)) : null}
        {teaching.debrief.length > 0 ? sheetPart(words.debrief, textList(teaching.debrief, 'plain')) : null}
      </>
    ),
  });
}

/** How long, where, with how many; and when, once that is known. */
function facts({ facts: all }: ShownSession): Markup {
  const { dataRows, children } = rowsOf<Fact>('session.facts', all, fact, blanks('name', 'value'));
  return (
    <dl class="facts" data-rows={dataRows}>
      {children}
    </dl>
  );
}

type Fact = Pick<ShownSession['facts'][number], 'name' | 'value'>;

function fact({ name, value }: Fact): Markup {
  return (
    <div>
      <dt {...shows(name)} />
      <dd {...shows(value)} />
    </div>
  );
}

function ready({ models, tools }: ShownSession): Markup {
  return (
    <>
      <ul class="ticks" {...rowsOf<ReadyModel>('session.models', models, readyModel, blankModel)} />
      <ul class="ticks" {...rowsOf<Ready>('session.tools', tools, readyRow, blankReady)} />
    </>
  );
}

type Ready = Pick<ShownSession['models'][number], 'name' | 'count'>;

type ReadyModel = Pick<ShownSession['models'][number], 'name' | 'count' | 'wears'>;

function readyModel({ name, count, wears }: ReadyModel): Markup {
  return (
    <li>
      {box()}
      <span>
        <span {...shows(name)} />: <b {...shows(count)} /> <span {...shows(wears)} />
      </span>
    </li>
  );
}

const blankModel = blanks('name', 'count', 'wears');

function readyRow({ name, count }: Ready): Markup {
  return (
    <li>
      {box()}
      <span>
        <span {...shows(name)} />: <b {...shows(count)} />
      </span>
    </li>
  );
}

const blankReady = blanks('name', 'count');

/** For the wall and for the hand: who is where when, and what stands at each station. */
export function timetableSheet(view: SessionSheetView): Root {
  const { session } = view;
  return moduleSheet(view, {
    id: 'timetable',
    follows: true,
    main: (
      <>
        {moduleSheetHead(view, titles.timetable, [plan.date, plan.room, plan.begins])}
        {facts(session)}
        {sheetPart(words.timetable, circuitTables(session.circuits), 'circuits')}
        {session.stations.length > 0
          ? sheetPart(words.rooms, stationList(session.stations), 'rooms-part')
          : null}
      </>
    ),
  });
}

export interface MatrixSheetView extends ModuleSheetFacts {
  readonly matrix: ShownMatrix;
}

export function matrixSheet(view: MatrixSheetView): Root {
  return moduleSheet(view, {
    id: 'matrix',
    main: (
      <>
        {moduleSheetHead(view, titles.matrix)}
        {scrolling(titles.matrix, matrixTable(view.matrix))}
      </>
    ),
  });
}

export interface HandOutView extends ModuleSheetFacts {
  readonly day: readonly ShownDayItem[];
  readonly models: readonly ShownModel[];
  /** Dangers of what stands at the stations. */
  readonly room: readonly Shown[];
}
type ShownDayItem = { readonly what: ShownModel['title']; readonly takes: ShownModel['title'] };

/** The trainees' page on paper: one side where it can. */
export function handOut(view: HandOutView): Root {
  const { module, day } = view;
  const { trainee } = moduleWords;
  const part = (heading: string, content: Content): Content =>
    content === null ? null : sheetPart(heading, content);
  return moduleSheet(view, {
    id: 'hand-out',
    defersWithin: isCareful(view),
    main: (
      <>
        {moduleSheetHead(view, module.title.text, [], titles['hand-out'])}
        <div class="two-columns">
          {part(trainee.careful, isCareful(view) ? careful(view, trainee.carefulSays) : null)}
          {part(trainee.figures.booked, textList([module.booked, module.where], 'plain'))}
          {part(trainee.aims, aims(module))}
          {part(trainee.prepare, preparation(module))}
          {part(trainee.bring, textList(module.bring, 'plain'))}
          {part(trainee.wear, textList(module.wear, 'plain'))}
          {part(trainee.day, dayList(day))}
          {part(trainee.judged, textList(module.judged, 'plain'))}
          {part(
            trainee.notices,
            textList(
              module.notices.map(({ says }) => says),
              'plain',
            ),
          )}
        </div>
      </>
    ),
  });
}

type Careful = Pick<HandOutView, 'models' | 'room' | 'defers'>;

function isCareful({ models, room }: Careful): boolean {
  return models.length + room.length > 0;
}

/** What of the models and the room can hurt, and who has the last word. */
function careful({ models, room, defers }: Careful, remark?: string): Markup {
  return (
    <>
      {remark === undefined ? null : <p>{remark}</p>}
      {models.map(inModel)}
      {textList(room, 'plain')}
      {defersLine(defers)}
    </>
  );
}

/** What is in a model, and its cautions: a line each. */
function inModel({ title, contains, cautions, electrosurgery }: ShownModel): Markup {
  return (
    <p class="in-model">
      <b {...shows(title)} /> <span {...shows(contains)} />{' '}
      {cautions.map(({ word, hazard }) => (
        <>
          <b {...shows(word)} /> <span {...shows(hazard)} />{' '}
        </>
      ))}
      <span {...shows(electrosurgery)} />
    </p>
  );
}

function aims({ objectives }: HandOutView['module']): Content {
  if (objectives.length === 0) return null;
  return (
    <ol>
      {objectives.map(({ does, howWell }) => (
        <li>
          <b {...shows(does)} /> <span {...shows(howWell)} />
        </li>
      ))}
    </ol>
  );
}

function preparation({ prepare }: HandOutView['module']): Content {
  if (prepare.length === 0) return null;
  return (
    <ul class="plain">
      {prepare.map(({ kind, what, takes }) => (
        <li>
          <span {...shows(kind)} />: <b {...shows(what)} /> <span {...shows(takes)} />
        </li>
      ))}
    </ul>
  );
}

function dayList(day: HandOutView['day']): Content {
  if (day.length === 0) return null;
  return (
    <ul class="day">
      {day.map(({ what, takes }) => (
        <li>
          <span {...shows(what)} /> <b {...shows(takes)} />
        </li>
      ))}
    </ul>
  );
}
