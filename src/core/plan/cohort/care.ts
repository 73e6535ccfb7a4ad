import type { Guide } from '../../model/guide.ts';
import type { Module, Station } from '../../model/module.ts';
import { minutesOf } from '../../time/minutes.ts';
import type { Agenda } from './agenda.ts';
import type { Turns } from './turns.ts';

/**
 * What the models of a session take besides their use, in minutes, as their guides say it for one station. Each station
 * is looked after by somebody of its own.
 */
export interface SessionCare {
  /** So long before it begins, the station that takes longest is set up; 0 where no guide says. */
  readonly setUp: number;
  /** Of each station that one group leaves to another, and of which it is known. */
  readonly resets: readonly Reset[];
  /** So long after the last use, for the station that takes longest. */
  readonly after: number;
  /** The item of the agenda with that id. */
  readonly clearUp?: number;
}

/** A station is set up again by the time the next group comes, or not. */
export interface Reset {
  readonly station: string;
  readonly minutes: number;
  /** From one round to the next. */
  readonly within: number;
}

type Guides = Readonly<Record<string, Guide>>;

export function careOf({ stations }: Module, guides: Guides, { items }: Agenda): SessionCare {
  const longest = (part: 'setUp' | 'after'): number =>
    Math.max(0, ...stations.flatMap((station) => timesOf(station, guides, part)));
  const clearUp = items.find(({ id }) => id === 'clear-up');
  return {
    setUp: longest('setUp'),
    resets: items.flatMap(({ turns }) => (turns ? resetsIn(turns, stations, guides) : [])),
    after: longest('after'),
    ...(clearUp ? { clearUp: clearUp.end - clearUp.start } : {}),
  };
}

/** After the last round there is time enough. */
function resetsIn(turns: Turns, stations: readonly Station[], guides: Guides): readonly Reset[] {
  if (turns.stationOf.length < 2) return [];
  return stations
    .filter(({ id }) => turns.stations.includes(id))
    .flatMap((station) => {
      const minutes = resetOf(station, guides);
      return minutes === undefined ? [] : [{ station: station.id, minutes, within: turns.changeOver }];
    });
}

/** What the station says, else the longest that one of its models takes between two uses. */
export function resetOf(station: Station, guides: Guides): number | undefined {
  if (station.reset) return minutesOf(station.reset);
  const times = timesOf(station, guides, 'between');
  return times.length === 0 ? undefined : Math.max(...times);
}

function timesOf(
  { models }: Station,
  guides: Guides,
  part: 'setUp' | 'between' | 'after',
): readonly number[] {
  return models.flatMap(({ guide }) => {
    const takes = guides[guide]?.inUse[part]?.takes;
    return takes ? [minutesOf(takes)] : [];
  });
}
