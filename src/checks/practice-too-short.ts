import type { Station } from '../core/model/module.ts';
import { cohortOf } from '../core/plan/cohort/cohort.ts';
import { exactText } from '../core/quantity/exact.ts';
import { secondsOf } from '../core/time/minutes.ts';
import type { Check, Finding } from './check.ts';
import { durationText } from './lookup/written.ts';
import { largestGroup, sharing } from './lookup/at-a-station.ts';

/** A station at which a trainee has less time with hands on than the module promises. */
export const practiceTooShort: Check = {
  code: 'practice-too-short',
  gravity: 'incomplete',
  find: ({ modules, workspace }) =>
    modules.flatMap(({ module, place }) => {
      const group = largestGroup(cohortOf(module, workspace.guides));
      return module.stations.flatMap((station, i) =>
        ofStation(station, group).map((facts) => ({
          places: [place('stations', i, 'practice'), place('stations', i, 'takes')] as const,
          facts,
        })),
      );
    }),
};

/** Those who share a seat take turns, each for as long as the others. */
function ofStation(station: Station, group: number): readonly Finding['facts'][] {
  if (!station.practice) return [];
  const [takes, least] = [secondsOf(station.takes), secondsOf(station.practice)];
  const sharers = sharing(station, group);
  const gets = takes.div(sharers);
  if (gets.gte(least)) return [];
  return [
    {
      station: station.id,
      gets: durationText(exactText(gets)),
      least: durationText(exactText(least)),
      sharers: String(sharers),
      needed: durationText(exactText(least.mul(sharers))),
    },
  ];
}
