import type { Check } from './check.ts';

/** A picture that says nothing to those who do not see it. */
export const imageWithoutText: Check = {
  code: 'image-without-text',
  gravity: 'incomplete',
  find: ({ guides }) =>
    guides.flatMap((read) =>
      read.guide.prose.images
        .filter(({ alt }) => alt.trim() === '')
        .map(({ file, at }) => ({ places: [read.prose(at)], facts: { file } })),
    ),
};
