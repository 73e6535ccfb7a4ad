import type { Module } from '../../core/model/module.ts';
import type { IsoDate } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import type { SessionTime } from '../../core/plan/cohort/session-question.ts';
import { calendarWords } from '../../words/calendar.ts';
import { planWords } from '../../words/plan.ts';
import { sessionWords } from '../../words/session.ts';
import { properly } from '../text/author-text.ts';
import { counted, fill, listed } from '../text/fill.ts';
import { toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showDate, showDuration } from '../text/times.ts';
import { sessionClock } from './session-clock.ts';
import { peopleText } from './session-names.ts';
import { sessionNotes } from './session-notes.ts';
import { showAgenda } from './show-agenda.ts';
import { showCare } from './show-care.ts';
import { showCircuits } from './show-circuits.ts';
import { showSessionModels } from './show-session-models.ts';
import { showStations } from './show-stations.ts';
import type { ShownPeople, ShownSession, ShownSessionFact } from './shown-session.ts';

/**
 * A module's session as finished text: pages, command line and browser print these letters and no others.
 *
 * @param cohort  Of this module, with the program's spares where they are to be shown.
 */
export function showSession(
  module: Module,
  cohort: CohortPlan,
  workspace: Workspace,
  { starts, on }: SessionTime = {},
): ShownSession {
  const clock = sessionClock(starts);
  return {
    title: shown('session.title', properly(module.title)),
    facts: showFacts('session.facts', module, cohort, starts === undefined ? '' : beginsText(clock(0), on)),
    people: cohort.people.map((kind) => showPeople(`session.people.${kind.id}`, kind)),
    agenda: showAgenda('session.agenda', module, cohort, clock, workspace),
    circuits: showCircuits('session.circuits', module, cohort, clock),
    stations: showStations('session.stations', module, cohort, workspace),
    models: showSessionModels('session.models', module, cohort, workspace),
    instructors: showInstructors('session.instructors', module, cohort),
    tools: [...cohort.tools].map(([id, count]) => ({
      id,
      name: shown(`session.tools.${id}.name`, toolName(id, workspace)),
      count: shown(`session.tools.${id}.count`, toolsText(count, cohort.toolsInAll.get(id) ?? count)),
    })),
    care: showCare('session.care', cohort, starts),
    notes: sessionNotes(module, cohort, workspace, on).map((text, i) => shown(`session.notes[${i}]`, text)),
  };
}

function showFacts(
  key: string,
  { session }: Module,
  cohort: CohortPlan,
  begins: string,
): readonly ShownSessionFact[] {
  const values: Readonly<Record<ShownSessionFact['id'], string>> = {
    booked: session ? showDuration(session.booked) : '',
    begins,
    where: properly(session?.where ?? ''),
    instructors: instructorsText(cohort),
  };
  const said = Object.entries(values).filter(([, value]) => value !== '') as [
    ShownSessionFact['id'],
    string,
  ][];
  return said.map(([id, value]) => ({
    id,
    name: shown(`${key}.${id}.name`, sessionWords.facts[id]),
    value: shown(`${key}.${id}.value`, value),
  }));
}

/** "13:00", "Fri 4 December 2026, 13:00" */
function beginsText(time: string, on: IsoDate | undefined): string {
  return on === undefined ? time : fill(calendarWords.moment, { day: showDate(on), time });
}

function showPeople(key: string, { id, count, as, groups }: CohortPlan['people'][number]): ShownPeople {
  const { inGroups, oneGroup } = sessionWords.people;
  const people = peopleText(id, count);
  const texts = {
    people,
    groups: counted(groups.length, 'group'),
    sizes: groups.map(showCount).join(planWords.listComma),
  };
  const isGrouped = as.includes('trainees') && count > 1;
  const says = !isGrouped ? people : fill(groups.length === 1 ? oneGroup : inGroups, texts);
  return {
    id,
    count,
    says: shown(`${key}.says`, says),
    as: shown(`${key}.as`, listed(as.map((role) => sessionWords.people.as[role]))),
  };
}

/** "8 at once; 20 where everybody takes a new one" */
function toolsText(count: number, all: number): string {
  const { atOnce, inAll } = sessionWords.tools;
  return all > count
    ? fill(inAll, { count: showCount(count), all: showCount(all) })
    : fill(atOnce, { count: showCount(count) });
}

function showInstructors(key: string, module: Module, cohort: CohortPlan): ShownSession['instructors'] {
  const { ratio } = module.cohort;
  const led = module.stations.filter((station) => station.led).length;
  const because = [
    ...(ratio === undefined ? [] : [fill(sessionWords.instructors.ratio, { ratio: showCount(ratio) })]),
    ...(led === 0 ? [] : [fill(sessionWords.instructors.led, { stations: counted(led, 'station') })]),
  ];
  return {
    says: shown(`${key}.says`, instructorsText(cohort)),
    because: because.map((text, i): Shown => shown(`${key}.because[${i}]`, text)),
  };
}

/** "3 there, 3 needed" */
function instructorsText({ instructors: { needed, there } }: CohortPlan): string {
  const words = sessionWords.instructors;
  return there === undefined
    ? fill(words.needed, { needed: showCount(needed) })
    : fill(words.there, { there: showCount(there), needed: showCount(needed) });
}
