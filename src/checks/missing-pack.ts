import type { Check } from './check.ts';

/** A material that is not free and that no shop sells, as far as its file says. */
export const missingPack: Check = {
  code: 'missing-pack',
  gravity: 'incomplete',
  find: ({ workspace, origins }) =>
    Object.values(workspace.materials)
      .filter(({ packs, free }) => packs.length === 0 && !free)
      .map(({ id, name }) => ({ places: [origins.at(`materials/${id}/name`)], facts: { material: name } })),
};
