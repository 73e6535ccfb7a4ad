import type { Check } from './check.ts';
import { linkedTo, unknownNames } from './unknown-names.ts';

/** A module that a link leads to. A workspace holds no modules yet, so that none can be there. */
export const unknownModule: Check = {
  code: 'unknown-module',
  gravity: 'stops',
  find: ({ guides }) => guides.flatMap((read) => unknownNames(linkedTo(read, 'module'), [])),
};
