import type { Check } from './check.ts';
import { namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** A station that an item of the agenda goes round, and that its module does not have. */
export const unknownCircuitStation: Check = {
  code: 'unknown-circuit-station',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap((read) => {
      const agenda = read.module.session?.agenda ?? [];
      const named = agenda.flatMap(({ id, stations }, i) =>
        namedIn(read, stations, the('agenda item', id), 'session', 'agenda', i, 'stations'),
      );
      return unknownNames(
        named,
        read.module.stations.map(({ id }) => id),
      );
    }),
};
