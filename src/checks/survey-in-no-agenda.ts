import type { Check } from './check.ts';

/** A survey, before or after, that no item of the agenda has time for. */
export const surveyInNoAgenda: Check = {
  code: 'survey-in-no-agenda',
  gravity: 'doubtful',
  find: ({ modules }) =>
    modules.flatMap(({ module: { session, surveys }, place }) => {
      if (!session) return [];
      const unasked = (['before', 'after'] as const).filter(
        (when) => !session.agenda.some(({ survey }) => survey === when),
      );
      return unasked.flatMap((when) => {
        const places = surveys.flatMap(({ asked }, i) =>
          asked.includes(when) ? [place('surveys', 'items', i, 'id')] : [],
        );
        const [first, ...others] = places;
        return first ? [{ places: [first, ...others] as const, facts: { when } }] : [];
      });
    }),
};
