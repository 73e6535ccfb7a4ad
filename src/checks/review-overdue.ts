import type { Check } from './check.ts';

/** A guide or a module whose approval has run out. */
export const reviewOverdue: Check = {
  code: 'review-overdue',
  gravity: 'calendar',
  find: ({ papers, today }) =>
    papers.flatMap(({ paper, place }) => {
      const until = paper.approved?.until;
      if (until === undefined || until >= today) return [];
      return [{ places: [place('approved', 'until')], facts: { paper: paper.title, until, today } }];
    }),
};
