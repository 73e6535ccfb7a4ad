import type { Module } from '../../core/model/module.ts';
import type { TimedItem } from '../../core/plan/cohort/agenda.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import type { Turns } from '../../core/plan/cohort/turns.ts';
import { planWords } from '../../words/plan.ts';
import { sessionWords } from '../../words/session.ts';
import { counted, fill, listed } from '../text/fill.ts';
import { showCount } from '../text/numbers.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { showMinutes } from '../text/times.ts';
import { type SessionClock, rangeOn } from './session-clock.ts';
import { agendaName, groupName, peopleText, stationNameIn } from './session-names.ts';
import type { ShownCircuit } from './shown-session.ts';

const words = sessionWords.circuit;

interface Round {
  readonly index: number;
  /** "0:15–0:40" */
  readonly time: string;
  /** Of each group, the index of its station. */
  readonly stationOf: Turns['stationOf'][number];
}

/** Each circuit of the agenda as a timetable. */
export function showCircuits(
  key: string,
  module: Module,
  cohort: CohortPlan,
  clock: SessionClock,
): readonly ShownCircuit[] {
  return cohort.agenda.items.flatMap((item) =>
    item.turns ? [showCircuit(`${key}.${item.id}`, module, cohort, item, item.turns, clock)] : [],
  );
}

function showCircuit(
  key: string,
  module: Module,
  cohort: CohortPlan,
  { id, start }: TimedItem,
  turns: Turns,
  clock: SessionClock,
): ShownCircuit {
  const rounds = roundsOf(turns, start, clock);
  const columns = columnsOf(key, module, turns, cohort.groups.length);
  return {
    id,
    name: shown(`${key}.name`, agendaName(module, id)),
    says: shown(`${key}.says`, saysText(turns)),
    columns,
    rounds: rounds.map((round) => showRound(`${key}.rounds[${round.index}]`, round, columns.length)),
    groups: cohort.groups.map((group, i) => ({
      name: shown(`${key}.groups[${i}].name`, groupName(i)),
      size: shown(`${key}.groups[${i}].size`, peopleText(group.people, group.size)),
      places: rounds.map((round) =>
        showPlace(`${key}.groups[${i}].places[${round.index}]`, round, i, columns),
      ),
    })),
  };
}

function roundsOf(
  { stationOf, round, changeOver }: Turns,
  start: number,
  clock: SessionClock,
): readonly Round[] {
  return stationOf.map((groups, index) => {
    const from = start + index * (round + changeOver);
    return { index, time: rangeOn(clock, from, from + round), stationOf: groups };
  });
}

function saysText({ stationOf, round, changeOver, minutes }: Turns): string {
  const rounds = counted(stationOf.length, 'round');
  if (stationOf.length < 2) return fill(words.saysOne, { rounds, round: showMinutes(round) });
  return fill(words.says, {
    rounds,
    round: showMinutes(round),
    change: showMinutes(changeOver),
    all: showMinutes(minutes),
  });
}

/** The stations, and where there are more groups than those a place to rest. */
function columnsOf(
  key: string,
  module: Module,
  { stations }: Turns,
  groups: number,
): ShownCircuit['columns'] {
  const own = stations.map((id) => ({
    id,
    name: shown(`${key}.columns.${id}`, stationNameIn(module, id)),
    isRest: false,
  }));
  const rest = { id: 'rest', name: shown(`${key}.columns.rest`, words.rest), isRest: true };
  return groups > stations.length ? [...own, rest] : own;
}

function showRound(
  key: string,
  { index, time, stationOf }: Round,
  columns: number,
): ShownCircuit['rounds'][number] {
  const there = (column: number): string => {
    const groups = stationOf.flatMap((station, group) =>
      (station ?? columns - 1) === column ? [groupName(group)] : [],
    );
    return groups.length === 0 ? planWords.none : listed(groups);
  };
  return {
    name: shown(`${key}.name`, fill(words.round, { n: showCount(index + 1) })),
    time: shown(`${key}.time`, time),
    cells: Array.from({ length: columns }, (_, column): Shown =>
      shown(`${key}.cells[${column}]`, there(column)),
    ),
  };
}

function showPlace(
  key: string,
  { time, stationOf }: Round,
  group: number,
  columns: ShownCircuit['columns'],
): ShownCircuit['groups'][number]['places'][number] {
  const station = stationOf[group];
  return {
    time: shown(`${key}.time`, time),
    place: shown(`${key}.place`, station === undefined ? words.rests : columns[station]!.name.text),
    isRest: station === undefined,
  };
}
