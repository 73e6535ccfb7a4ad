import type { Check } from './check.ts';

/** What a guide must say before others may rely on it: its version, its licence, what it trains. */
export const missingForReview: Check = {
  code: 'missing-for-review',
  gravity: 'incomplete',
  find: ({ guides }) =>
    guides.flatMap(({ guide, place }) =>
      (['version', 'licence', 'trains'] as const)
        .filter((key) => guide[key] === undefined)
        .map((key) => ({
          variant: key,
          places: [place('title'), ...(guide.status === 'draft' ? [] : [place('status')])] as const,
          facts: { guide: guide.title },
        })),
    ),
};
