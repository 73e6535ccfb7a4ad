import type { Check } from './check.ts';

/** A picture that says nothing to those who do not see it. */
export const imageWithoutText: Check = {
  code: 'image-without-text',
  gravity: 'incomplete',
  find: ({ papers }) =>
    papers.flatMap(({ paper, prose }) =>
      paper.prose.images
        .filter(({ alt }) => alt.trim() === '')
        .map(({ file, at }) => ({ places: [prose(at)], facts: { file } })),
    ),
};
