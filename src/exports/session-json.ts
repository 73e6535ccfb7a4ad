import type { Module } from '../core/model/module.ts';
import type { Program } from '../core/model/program.ts';
import type { Agenda, TimedItem } from '../core/plan/cohort/agenda.ts';
import type { CohortPlan } from '../core/plan/cohort/cohort.ts';
import { isoTime } from '../core/time/iso-time.ts';

/**
 * A module's session for other programs, beside its plan. Times are whole minutes from its beginning, which stands in
 * `begins` where it is known.
 *
 * @param begins  Minutes since 1970 in UTC.
 */
export function sessionJson(module: Module, cohort: CohortPlan, { zone }: Program, begins?: number) {
  const { id, version } = module;
  const { people, groups, agenda, models, instructors, seats, tools, toolsInAll, care } = cohort;
  return {
    module: id,
    ...(version === undefined ? {} : { version }),
    ...(begins === undefined ? {} : { begins: isoTime(zone, begins) }),
    booked: agenda.booked,
    people: people.map(({ id: kind, count, as }) => ({ id: kind, count, as })),
    groups: groups.map(({ people: of, size }, i) => ({ group: i + 1, people: of, size })),
    agenda: agendaJson(agenda),
    ...(agenda.over > 0 ? { over: agenda.over } : {}),
    stations: module.stations.map((station) => ({ id: station.id, seats: seats.get(station.id) })),
    models: models.map(({ guide, level, models: count, uses, besides, spares, parts }) => ({
      guide,
      ...(level === undefined ? {} : { level }),
      models: count,
      uses,
      besides,
      spares,
      ...(parts.length === 0 ? {} : { parts }),
    })),
    instructors,
    tools: Object.fromEntries(tools),
    toolsInAll: Object.fromEntries(toolsInAll),
    care,
  };
}

function agendaJson({ items }: Agenda) {
  return items.map(({ id, start, end, turns }) => ({
    id,
    start,
    end,
    ...(turns ? { rounds: roundsJson(start, turns) } : {}),
  }));
}

/** Round by round the groups by station; a group that is at none rests. */
function roundsJson(
  start: number,
  { stationOf, stations, round, changeOver }: NonNullable<TimedItem['turns']>,
) {
  return stationOf.map((places, i) => ({
    start: start + i * (round + changeOver),
    end: start + i * (round + changeOver) + round,
    at: Object.fromEntries(
      places.flatMap((place, group) => (place === undefined ? [] : [[stations[place]!, group + 1]])),
    ),
  }));
}
