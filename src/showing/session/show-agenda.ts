import type { Module } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { shown } from '../shown/shown.ts';
import { showMinutes } from '../text/times.ts';
import { scriptText } from './script-text.ts';
import { type SessionClock, rangeOn } from './session-clock.ts';
import { agendaName } from './session-names.ts';
import type { ShownAgendaItem } from './shown-session.ts';

/** What happens when, and what is said then. */
export function showAgenda(
  key: string,
  module: Module,
  { agenda }: CohortPlan,
  clock: SessionClock,
  workspace: Workspace,
): readonly ShownAgendaItem[] {
  return (module.session?.agenda ?? []).map(({ id, script, survey }, i) => {
    const { start, end, turns } = agenda.items[i]!;
    return {
      id,
      time: shown(`${key}.${id}.time`, rangeOn(clock, start, end)),
      takes: shown(`${key}.${id}.takes`, showMinutes(end - start)),
      what: shown(`${key}.${id}.what`, agendaName(module, id)),
      script: script.map((says, j) =>
        shown(`${key}.${id}.script[${j}]`, scriptText(says, module, workspace)),
      ),
      ...(survey ? { survey } : {}),
      isCircuit: turns !== undefined,
    };
  });
}
