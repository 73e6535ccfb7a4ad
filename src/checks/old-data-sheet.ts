import { addMonths } from '../core/time/day.ts';
import type { Check } from './check.ts';

/** How long a safety data sheet is taken as it is: three years. Common practice, no source. */
const goodFor = 36;

/** A safety data sheet from more than three years ago: its supplier may have another by now. */
export const oldDataSheet: Check = {
  code: 'old-data-sheet',
  gravity: 'calendar',
  find: ({ workspace, origins, today }) =>
    Object.values(workspace.materials).flatMap(({ id, name, dataSheet }) => {
      const dated = dataSheet?.dated;
      if (dated === undefined || addMonths(dated, goodFor) >= today) return [];
      return [
        { places: [origins.at(`materials/${id}/data-sheet/dated`)], facts: { material: name, dated, today } },
      ];
    }),
};
