import { cohortOf } from '../core/plan/cohort/cohort.ts';
import type { Turns } from '../core/plan/cohort/turns.ts';
import { minutesUp, secondsOf } from '../core/time/minutes.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './context.ts';
import { timeText } from './written.ts';

/** A station that takes longer to set up again than there is between two groups. */
export const resetLongerThanChangeOver: Check = {
  code: 'reset-longer-than-change-over',
  gravity: 'incomplete',
  find: ({ modules, workspace }) =>
    modules.flatMap((read) =>
      cohortOf(read.module, workspace.guides).agenda.items.flatMap(({ turns }) =>
        turns ? ofCircuit(read, turns) : [],
      ),
    ),
};

/** After the last round there is time enough. */
function ofCircuit(
  { module, place }: ModuleRead,
  { stations, stationOf, changeOver }: Turns,
): readonly Finding[] {
  if (stationOf.length < 2) return [];
  return module.stations.flatMap(({ id, reset }, i) => {
    const takes = reset ? minutesUp(secondsOf(reset)) : 0;
    if (!stations.includes(id) || takes <= changeOver) return [];
    const facts = { station: id, reset: timeText(takes), changeOver: timeText(changeOver) };
    return [{ places: [place('stations', i, 'reset'), place('stations', i, 'change-over')], facts }];
  });
}
