import type { Check } from './check.ts';

/** A station that no item of the agenda goes round, so that no trainee gets there. */
export const stationInNoAgenda: Check = {
  code: 'station-in-no-agenda',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module: { session, stations }, place }) => {
      if (!session) return [];
      const reached = session.agenda.flatMap((item) => item.stations);
      return stations.flatMap(({ id }, i) =>
        reached.includes(id) ? [] : [{ places: [place('stations', i, 'id')] as const, facts: { station: id } }],
      );
    }),
};
