import type { Check } from './check.ts';

/** A material with hazard codes of which nobody says from which safety data sheet they come. */
export const missingDataSheet: Check = {
  code: 'missing-data-sheet',
  gravity: 'incomplete',
  find: ({ workspace, origins }) =>
    Object.values(workspace.materials)
      .filter(({ hazards, dataSheet }) => hazards.length > 0 && dataSheet?.link === undefined)
      .map(({ id, name, dataSheet }) => ({
        variant: dataSheet ? 'link' : undefined,
        places: [origins.at(`materials/${id}/hazards`)],
        facts: { material: name },
      })),
};
