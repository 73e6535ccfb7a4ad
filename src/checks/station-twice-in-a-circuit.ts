import type { Check } from './check.ts';

/** A station that stands twice in one circuit: two groups would be at it at once. */
export const stationTwiceInACircuit: Check = {
  code: 'station-twice-in-a-circuit',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) =>
      (module.session?.agenda ?? []).flatMap(({ id: item, stations }, i) =>
        stations.flatMap((id, j) => {
          const first = stations.indexOf(id);
          if (first === j) return [];
          const at = (index: number) => place('session', 'agenda', i, 'stations', index);
          const rest = stations.filter((_, index) => index !== j).join(', ');
          return [{ places: [at(j), at(first)] as const, facts: { item, station: id, rest } }];
        }),
      ),
    ),
};
