import type { Check } from './check.ts';
import { linkedTo, unknownNames } from './unknown-names.ts';

/** A module that a link leads to and that is not there. */
export const unknownModule: Check = {
  code: 'unknown-module',
  gravity: 'stops',
  find: ({ guides, workspace, isThere }) =>
    guides.flatMap((read) =>
      unknownNames(linkedTo(read, 'module'), Object.keys(workspace.modules), (id) => isThere('modules', id)),
    ),
};
