import type { Place } from '../core/diagnostic.ts';
import type { Station } from '../core/model/module.ts';
import type { Duration } from '../core/model/values.ts';
import { cohortOf } from '../core/plan/cohort/cohort.ts';
import type { Turns } from '../core/plan/cohort/turns.ts';
import { minutesOf } from '../core/time/minutes.ts';
import type { Check, Finding } from './check.ts';
import type { Context, ModuleRead } from './lookup/context.ts';
import { timeText } from './lookup/written.ts';

/** A station that takes longer to set up again than there is between two groups. */
export const resetLongerThanChangeOver: Check = {
  code: 'reset-longer-than-change-over',
  gravity: 'incomplete',
  find: (context) =>
    context.modules.flatMap((read) =>
      cohortOf(read.module, context.workspace.guides).agenda.items.flatMap(({ turns }) =>
        turns ? ofCircuit(read, turns, context) : [],
      ),
    ),
};

/** After the last round there is time enough. */
function ofCircuit(
  read: ModuleRead,
  { stations, stationOf, changeOver }: Turns,
  context: Context,
): readonly Finding[] {
  if (stationOf.length < 2) return [];
  return read.module.stations.flatMap((station, i) =>
    (stations.includes(station.id) ? resetsOf(read, station, i, context) : [])
      .filter(({ takes }) => minutesOf(takes) > changeOver)
      .map(({ takes, at, guide }) => ({
        variant: guide === undefined ? undefined : 'guide',
        places: [read.place('stations', i, 'change-over'), at] as const,
        facts: {
          station: station.id,
          reset: timeText(minutesOf(takes)),
          changeOver: timeText(changeOver),
          guide: guide ?? '',
        },
      })),
  );
}

interface Reset {
  readonly takes: Duration;
  readonly at: Place;
  /** Whose models take it, where the station itself does not say. */
  readonly guide?: string;
}

/** What the station says, else what each of its guides says that a model takes between two uses. */
function resetsOf(
  { place }: ModuleRead,
  { reset, models }: Station,
  index: number,
  { workspace, origins }: Context,
): readonly Reset[] {
  if (reset) return [{ takes: reset, at: place('stations', index, 'reset') }];
  return models.flatMap(({ guide: id }) => {
    const guide = workspace.guides[id];
    const takes = guide?.inUse.between?.takes;
    return takes ? [{ takes, at: origins.at(`guides/${id}/in-use/between/takes`), guide: guide.title }] : [];
  });
}
