import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/**
 * A session that has no brief, no debrief or no clear-up: items of the agenda with these ids. Where there are models,
 * a session without a brief or a clear-up is always an error, since what must be said in them is not said either.
 */
export const missingAgendaItem: Check = {
  code: 'missing-agenda-item',
  gravity: 'incomplete',
  find: ({ modules }) => modules.flatMap(ofModule),
};

function ofModule({ module: { session, stations, title }, key }: ModuleRead): readonly Finding[] {
  if (!session) return [];
  const here = session.agenda.map(({ id }) => id);
  const hasModels = stations.some(({ models }) => models.length > 0);
  return (['brief', 'debrief', 'clear-up'] as const)
    .filter((id) => !here.includes(id))
    .map((id) => ({
      variant: id,
      places: [key('session', 'agenda')],
      facts: { module: title },
      gravity: hasModels && id !== 'debrief' ? 'stops' : 'incomplete',
    }));
}
