import type { Check } from './check.ts';

/** A picture that does not lie in the guide's folder. */
export const missingImage: Check = {
  code: 'missing-image',
  gravity: 'incomplete',
  find: ({ guides }) =>
    guides.flatMap((read) =>
      read.guide.prose.images
        .filter(({ exists }) => !exists)
        .map(({ file, alt, at }) => ({
          variant: /^[a-z]+:|^\/\//i.test(file) ? 'elsewhere' : undefined,
          places: [read.prose(at)],
          facts: { file, alt: alt || '…', folder: `guides/${read.guide.id}` },
        })),
    ),
};
