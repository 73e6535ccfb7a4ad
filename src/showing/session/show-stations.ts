import type { Module, Station } from '../../core/model/module.ts';
import type { Workspace } from '../../core/model/workspace.ts';
import { resetOf } from '../../core/plan/cohort/care.ts';
import type { CohortPlan } from '../../core/plan/cohort/cohort.ts';
import { setsOf } from '../../core/plan/cohort/turns.ts';
import { exact } from '../../core/quantity/exact.ts';
import { secondsOf } from '../../core/time/minutes.ts';
import { sessionWords } from '../../words/session.ts';
import { asSentence } from '../text/author-text.ts';
import { counted, fill } from '../text/fill.ts';
import { toolName } from '../text/names.ts';
import { showCount } from '../text/numbers.ts';
import { shown } from '../shown/shown.ts';
import { showDuration, showMinutes } from '../text/times.ts';
import { guideName, stationName } from './session-names.ts';
import type { ShownStation } from './shown-session.ts';

const words = sessionWords.station;

/** Each station: how many sit where, on what, with what. */
export function showStations(
  key: string,
  module: Module,
  cohort: CohortPlan,
  workspace: Workspace,
): readonly ShownStation[] {
  const group = cohort.groups[0]?.size ?? 0;
  return module.stations.map((station) => showStation(`${key}.${station.id}`, station, group, workspace));
}

/** @param group  How many come at once, at most. */
function showStation(key: string, station: Station, group: number, workspace: Workspace): ShownStation {
  const { id, led, meanwhile } = station;
  const sets = setsOf(station, group);
  const reset = resetOf(station, workspace.guides);
  return {
    id,
    name: shown(`${key}.name`, stationName(station)),
    seats: shown(`${key}.seats`, seatsText(sets.seat, station.atOne)),
    takes: shown(`${key}.takes`, takesText(station)),
    reset: shown(`${key}.reset`, reset === undefined ? '' : fill(words.reset, { time: showMinutes(reset) })),
    led,
    ledSays: shown(`${key}.ledSays`, led ? words.led : words.alone),
    models: station.models.map((models, i) => ({
      guide: models.guide,
      ...(models.level === undefined ? {} : { level: models.level }),
      says: shown(`${key}.models[${i}].says`, usesText(models, workspace)),
    })),
    tools: station.tools.map(({ use, count, each }, i) => {
      const texts = { count: showCount(count * sets[each]), tool: toolName(use, workspace) };
      return shown(`${key}.tools[${i}]`, fill(words.tool, texts));
    }),
    meanwhile: meanwhile.map((what, i) => shown(`${key}.meanwhile[${i}]`, asSentence(what))),
  };
}

function seatsText(count: number, atOne: number): string {
  const seats = counted(count, 'seat');
  return atOne === 1
    ? fill(words.seats, { seats })
    : fill(words.seatsOfMany, { seats, people: counted(atOne, 'person') });
}

function takesText({ takes, changeOver }: Station): string {
  const time = showDuration(takes);
  return secondsOf(changeOver).equals(exact(0))
    ? fill(words.takesAlone, { time })
    : fill(words.takes, { time, change: showDuration(changeOver) });
}

function usesText({ guide, level, uses, share }: Station['models'][number], workspace: Workspace): string {
  return fill(words.uses, {
    model: guideName(workspace, guide, level),
    uses: counted(uses, 'use'),
    share: sessionWords.shares[share],
  });
}
