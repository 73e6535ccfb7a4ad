import { cohortOf } from '../core/plan/cohort/cohort.ts';
import { largestGroup } from './lookup/at-a-station.ts';
import type { Check } from './check.ts';

/** A station where not everybody of a group has a seat, so that somebody never practises at it. */
export const tooFewSeats: Check = {
  code: 'too-few-seats',
  gravity: 'incomplete',
  find: ({ modules, workspace }) =>
    modules.flatMap(({ module, place }) => {
      const group = largestGroup(cohortOf(module, workspace.guides));
      return module.stations.flatMap(({ id, seats, atOne }, i) => {
        if (seats === 'as needed' || seats * atOne >= group) return [];
        const [room, needed] = [seats * atOne, Math.ceil(group / atOne)].map(String);
        const facts = { station: id, group: String(group), room: room!, needed: needed! };
        return [{ places: [place('stations', i, 'seats')] as const, facts }];
      });
    }),
};
