import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { utcTime } from '../../core/time/iso-time.ts';
import { sessionWords } from '../../words/session.ts';
import { fill, plainSpaces } from '../text/fill.ts';
import { properly } from '../text/author-text.ts';
import type { PlanEvent } from '../schedule/show-events.ts';
import { groupName } from './session-names.ts';
import { type TimetableRow, timetableOf } from './timetable.ts';

const { events: words, circuit } = sessionWords;

/**
 * A session as events of a calendar: one for each item of the agenda, and one for each round of a circuit.
 *
 * @param begins  Minutes since 1970 in UTC.
 * @param group   From 1: where that group is. Left out, as an instructor sees it: which groups are where.
 */
export function sessionEvents(
  module: Module,
  cohort: CohortPlan,
  workspace: Workspace,
  begins: number,
  group?: number,
): readonly PlanEvent[] {
  const rows = timetableOf(module, cohort, workspace);
  const day = utcTime(begins).replace(/[-:]/g, '').toLowerCase();
  const seen = rows.filter((row) => row.group === undefined || row.group === (group ?? 1));
  return seen.map((row) => {
    const together = rows.filter(({ item, round }) => item === row.item && round === row.round);
    return {
      id: [...idOf(module.id, row, group), day].join('.'),
      title: fill(words.title, {
        module: plainSpaces(properly(module.title)),
        what: group === undefined ? ofAll(row) : ofGroup(row),
      }),
      ...notesOf(group === undefined ? [...row.script, ...whoIsWhere(together)] : row.script),
      from: begins + row.from,
      until: begins + row.until,
    };
  });
}

function idOf(module: string, { item, round }: TimetableRow, group: number | undefined): readonly string[] {
  return [
    'session',
    module,
    item,
    ...(round === undefined ? [] : [`round-${round}`]),
    group === undefined ? 'instructors' : `group-${group}`,
  ];
}

/** "Four stations, round 2" */
function ofAll({ what, round }: TimetableRow): string {
  return round === undefined ? what : fill(words.round, { what, n: String(round) });
}

/** "Group 1, Chest drain" */
function ofGroup({ what, group, station }: TimetableRow): string {
  if (group === undefined) return what;
  return fill(words.group, { group: groupName(group - 1), where: station?.name ?? circuit.rests });
}

/** "Chest drain: Group 1", a line for each group; the one that rests has its own. */
function whoIsWhere(rows: readonly TimetableRow[]): readonly string[] {
  return rows.flatMap(({ group, station }) =>
    group === undefined
      ? []
      : [fill(circuit.at, { station: station?.name ?? circuit.rest, group: groupName(group - 1) })],
  );
}

function notesOf(lines: readonly string[]): { readonly notes?: string } {
  return lines.length === 0 ? {} : { notes: lines.join('\n') };
}
