import type { Material } from '../core/model/material.ts';
import type { Check } from './check.ts';

/** A material with hazard codes of which nobody says from which safety data sheet, and of which day, they come. */
export const missingDataSheet: Check = {
  code: 'missing-data-sheet',
  gravity: 'incomplete',
  find: ({ workspace, origins }) =>
    Object.values(workspace.materials)
      .filter(({ hazards, dataSheet }) => hazards.length > 0 && !(dataSheet?.link && dataSheet.dated))
      .map(({ id, name, dataSheet }) => ({
        variant: missingOf(dataSheet),
        places: [origins.at(`materials/${id}/hazards`)],
        facts: { material: name },
      })),
};

function missingOf(dataSheet: Material['dataSheet']): string | undefined {
  if (!dataSheet) return undefined;
  return dataSheet.link === undefined ? 'link' : 'date';
}
