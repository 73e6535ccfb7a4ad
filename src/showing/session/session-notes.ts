import type { Module, Station } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { secondsOf } from '../../core/time/minutes.ts';
import { sessionWords } from '../../words/session.ts';
import { fill } from '../fill.ts';
import { showCount } from '../numbers.ts';
import { showDuration, showMinutes } from '../times.ts';
import { agendaName, stationName } from './session-names.ts';

const words = sessionWords.notes;

/** What does not fit, or is not known: a sentence each. */
export function sessionNotes(module: Module, cohort: CohortPlan, workspace: Workspace): readonly string[] {
  return [
    ...(cohort.groups.length === 0 ? [words.nobody] : []),
    ...agendaNotes(module, cohort),
    ...instructorNotes(cohort),
    ...module.stations.flatMap((station) => stationNotes(station, cohort)),
    ...missingGuides(module, workspace),
  ];
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

function stationNotes(station: Station, { groups, seats }: CohortPlan): readonly string[] {
  const { id, atOne, reset, changeOver } = station;
  const name = stationName(station);
  const group = groups[0]?.size ?? 0;
  const places = (seats.get(id) ?? 0) * atOne;
  const isResetLate = reset !== undefined && secondsOf(reset).compare(secondsOf(changeOver)) > 0;
  return [
    ...(places < group
      ? [fill(words.fewSeats, { station: name, places: showCount(places), group: showCount(group) })]
      : []),
    ...(isResetLate
      ? [
          fill(words.resetTooLong, {
            station: name,
            reset: showDuration(reset),
            change: showDuration(changeOver),
          }),
        ]
      : []),
  ];
}

function missingGuides({ stations }: Module, { guides }: Workspace): readonly string[] {
  const named = new Set(stations.flatMap(({ models }) => models.map(({ guide }) => guide)));
  return [...named].filter((guide) => !guides[guide]).map((guide) => fill(words.noGuide, { guide }));
}
