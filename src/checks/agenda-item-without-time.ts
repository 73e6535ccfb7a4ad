import type { Check } from './check.ts';

/** An item of the agenda that says neither how long it takes nor which stations it goes round. */
export const agendaItemWithoutTime: Check = {
  code: 'agenda-item-without-time',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) =>
      (module.session?.agenda ?? []).flatMap(({ id, takes, stations }, i) =>
        takes !== undefined || stations.length > 0
          ? []
          : [{ places: [place('session', 'agenda', i, 'id')] as const, facts: { item: id } }],
      ),
    ),
};
