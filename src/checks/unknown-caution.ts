import type { Check } from './check.ts';
import { linkedTo, unknownNames } from './lookup/unknown-names.ts';

/** A caution that a link of the prose leads to, and that the guide does not have. */
export const unknownCaution: Check = {
  code: 'unknown-caution',
  gravity: 'stops',
  find: ({ guides }) =>
    guides.flatMap((read) =>
      unknownNames(
        linkedTo(read, 'caution'),
        read.guide.cautions.map(({ id }) => id),
      ),
    ),
};
