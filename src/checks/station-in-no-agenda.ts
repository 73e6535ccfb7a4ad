import type { Check } from './check.ts';

/**
 * A station that no item of the agenda goes round, so that no trainee gets there. Where an item names a station that is
 * not there, that is told instead: it may be meant.
 */
export const stationInNoAgenda: Check = {
  code: 'station-in-no-agenda',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module: { session, stations }, place }) => {
      if (!session) return [];
      const reached = session.agenda.flatMap((item) => item.stations);
      const isMisnamed = reached.some((id) => stations.every((station) => station.id !== id));
      if (isMisnamed) return [];
      return stations.flatMap(({ id }, i) =>
        reached.includes(id)
          ? []
          : [{ places: [place('stations', i, 'id')] as const, facts: { station: id } }],
      );
    }),
};
