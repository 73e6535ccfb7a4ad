import type { Check } from './check.ts';
import { linkedTo, namedIn, the, unknownNames } from './lookup/unknown-names.ts';

/** A module that a link leads to or another module comes after, and that is not there. */
export const unknownModule: Check = {
  code: 'unknown-module',
  gravity: 'stops',
  find: ({ guides, modules, workspace, isThere }) => {
    const known = Object.keys(workspace.modules);
    const isKnown = (id: string): boolean => isThere('modules', id);
    return [
      ...guides.flatMap((read) => unknownNames(linkedTo(read, 'module'), known, isKnown)),
      ...modules.flatMap((read) => {
        const { title, after } = read.module;
        const named = [...namedIn(read, after, the('module', title), 'after'), ...linkedTo(read, 'module')];
        return unknownNames(named, known, isKnown);
      }),
    ];
  },
};
