import type { Check } from './check.ts';
import { unknownNames } from './lookup/unknown-names.ts';

/** A supplier that a pack comes from, and that the program does not list: its delivery would cost nothing. */
export const unknownSupplier: Check = {
  code: 'unknown-supplier',
  gravity: 'incomplete',
  find: ({ workspace, origins }) => {
    const named = Object.values(workspace.materials).flatMap(({ id, name, packs }) =>
      packs.flatMap(({ from }, i) => {
        if (from === undefined) return [];
        const place = origins.at(`materials/${id}/packs/${i}/from`);
        return [{ name: from, place, who: `A pack of ${name}`, put: (known: string) => `from: ${known}` }];
      }),
    );
    return unknownNames(named, Object.keys(workspace.program.suppliers));
  },
};
