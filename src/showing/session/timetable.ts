import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { plainSpaces } from '../text/fill.ts';
import { scriptText } from './script-text.ts';
import { agendaName, stationNameIn } from './session-names.ts';

/** A stretch of a session: of everybody, or of one group in one round. Its texts are for other programs. */
export interface TimetableRow {
  /** The agenda item's. */
  readonly item: string;
  /** Minutes from the beginning of the session. */
  readonly from: number;
  readonly until: number;
  readonly what: string;
  readonly script: readonly string[];
  /** Of a circuit; each from 1. */
  readonly round?: number;
  readonly group?: number;
  /** Left out where the group rests. */
  readonly station?: { readonly id: string; readonly name: string };
}

/** A session in the order of its times; a circuit has a row for each group in each round. */
export function timetableOf(
  module: Module,
  { agenda }: CohortPlan,
  workspace: Workspace,
): readonly TimetableRow[] {
  return agenda.items.flatMap(({ id, start, end, turns }, i): readonly TimetableRow[] => {
    const script = (module.session?.agenda[i]?.script ?? []).map((says) =>
      plainSpaces(scriptText(says, module, workspace)),
    );
    const own = { item: id, what: plainSpaces(agendaName(module, id)), script };
    if (!turns) return [{ ...own, from: start, until: end }];
    return turns.stationOf.flatMap((places, round) => {
      const from = start + round * (turns.round + turns.changeOver);
      const until = from + turns.round;
      return places.map((place, group) => ({
        ...own,
        from,
        until,
        round: round + 1,
        group: group + 1,
        ...(place === undefined ? {} : { station: stationOf(module, turns.stations[place]!) }),
      }));
    });
  });
}

function stationOf(module: Module, id: string): NonNullable<TimetableRow['station']> {
  return { id, name: plainSpaces(stationNameIn(module, id)) };
}
