import type { Check } from './check.ts';

/** A guide whose approval has run out. */
export const reviewOverdue: Check = {
  code: 'review-overdue',
  gravity: 'calendar',
  find: ({ guides, today }) =>
    guides.flatMap(({ guide, place }) => {
      const until = guide.approved?.until;
      if (until === undefined || until >= today) return [];
      return [{ places: [place('approved', 'until')], facts: { guide: guide.title, until, today } }];
    }),
};
