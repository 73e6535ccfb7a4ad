import type { Guide } from '../../core/model/guide.ts';
import { guidesOfModule } from '../../core/model/guides-of-module.ts';
import type { Module, Station } from '../../core/model/module.ts';
import type { Program } from '../../core/model/program.ts';
import type { IsoDate } from '../../core/model/values.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { dayNumber } from '../../core/time/day.ts';
import { isWorkingDay } from '../../core/time/working-hours.ts';
import { sessionWords } from '../../words/session.ts';
import { fill } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import { showDate, showMinutes } from '../text/times.ts';
import { agendaName, stationName } from './session-names.ts';

const words = sessionWords.notes;

/** What does not fit, or is not known: a sentence each. */
export function sessionNotes(
  module: Module,
  cohort: CohortPlan,
  workspace: Workspace,
  on?: IsoDate,
): readonly string[] {
  return [
    ...dayNotes(workspace.program, on),
    ...(cohort.groups.length === 0 ? [words.nobody] : []),
    ...agendaNotes(module, cohort),
    ...instructorNotes(cohort),
    ...module.stations.flatMap((station) => stationNotes(station, cohort)),
    ...clearUpNotes(cohort),
    ...missingGuides(module, workspace),
    ...neverWorn(module, workspace),
  ];
}

function dayNotes({ work }: Program, on: IsoDate | undefined): readonly string[] {
  const isClosed = on !== undefined && !isWorkingDay(work, dayNumber(on));
  return isClosed ? [fill(words.closed, { day: showDate(on) })] : [];
}

function agendaNotes(module: Module, { agenda }: CohortPlan): readonly string[] {
  const { session } = module;
  if (!session) return [words.noSession];
  const untimed = session.agenda.filter(({ takes }, i) => takes === undefined && !agenda.items[i]!.turns);
  const { booked, over } = agenda;
  const end = agenda.items.at(-1)?.end ?? 0;
  const left = booked - end;
  return [
    ...untimed.map(({ id }) => fill(words.noTime, { item: agendaName(module, id) })),
    ...(over > 0
      ? [fill(words.over, { takes: showMinutes(end), booked: showMinutes(booked), over: showMinutes(over) })]
      : []),
    ...(left > 0
      ? [fill(words.under, { takes: showMinutes(end), booked: showMinutes(booked), left: showMinutes(left) })]
      : []),
  ];
}

function instructorNotes({ instructors: { needed, there } }: CohortPlan): readonly string[] {
  return there === undefined || there >= needed
    ? []
    : [fill(words.fewInstructors, { needed: showCount(needed), there: showCount(there) })];
}

function stationNotes(station: Station, { groups, seats, care }: CohortPlan): readonly string[] {
  const { id, atOne } = station;
  const name = stationName(station);
  const group = groups[0]?.size ?? 0;
  const places = (seats.get(id) ?? 0) * atOne;
  const late = care.resets.find((reset) => reset.station === id && reset.minutes > reset.within);
  return [
    ...(places < group
      ? [fill(words.fewSeats, { station: name, places: showCount(places), group: showCount(group) })]
      : []),
    ...(late
      ? [
          fill(words.resetTooLong, {
            station: name,
            reset: showMinutes(late.minutes),
            change: showMinutes(late.within),
          }),
        ]
      : []),
  ];
}

function clearUpNotes({ care: { after, clearUp } }: CohortPlan): readonly string[] {
  return clearUp === undefined || clearUp >= after
    ? []
    : [fill(words.clearUpShort, { after: showMinutes(after), clearUp: showMinutes(clearUp) })];
}

function missingGuides(module: Module, { guides }: Workspace): readonly string[] {
  return guidesOfModule(module)
    .filter((guide) => !guides[guide])
    .map((guide) => fill(words.noGuide, { guide }));
}

/** What its guide does not say, nobody can count: such models are taken never to wear out. */
function neverWorn(module: Module, { guides }: Workspace): readonly string[] {
  const unsaid = guidesOfModule(module)
    .flatMap((id) => guides[id] ?? [])
    .filter(isUnsaid);
  return unsaid.map(({ title }) => fill(words.lastsUnsaid, { guide: title }));
}

function isUnsaid({ lasts, parts }: Guide): boolean {
  return parts.length > 0 ? parts.some((part) => part.lasts === undefined) : lasts === undefined;
}
