import type { Check } from './check.ts';

/** A session that has no brief, no debrief or no clear-up: items of the agenda with these ids. */
export const missingAgendaItem: Check = {
  code: 'missing-agenda-item',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module: { session, title }, key }) => {
      if (!session) return [];
      const here = session.agenda.map(({ id }) => id);
      return (['brief', 'debrief', 'clear-up'] as const)
        .filter((id) => !here.includes(id))
        .map((id) => ({
          variant: id,
          places: [key('session', 'agenda')] as const,
          facts: { module: title },
        }));
    }),
};
