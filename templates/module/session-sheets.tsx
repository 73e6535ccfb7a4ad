import type { Root } from 'hast';
import type { ShownMatrix } from '../../src/showing/module/show-matrix.ts';
import type { ShownModel } from '../../src/showing/module/show-models.ts';
import type { Shown } from '../../src/showing/shown/shown.ts';
import type { ShownTeaching } from '../../src/showing/module/show-teaching.ts';
import type { ShownSession } from '../../src/showing/session/shown-session.ts';
import { teachingWords } from '../../src/words/teaching.ts';
import { agendaToTick } from './agenda-table.tsx';
import { matrixTable } from './module-matrix.tsx';
import { type ModuleSheetFacts, moduleSheet, moduleSheetHead, sheetPart } from './module-sheet.tsx';
import { careful, isCareful } from './sheet-careful.tsx';
import { textList } from '../page/lists.tsx';
import type { Markup } from '../page/markup.ts';
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
