import type { IsoDate } from '../core/model/values.ts';
import { printHolding } from '../core/quantity/print.ts';
import type { Check, Finding } from './check.ts';
import type { Context } from './lookup/context.ts';
import { guidesTouched } from './lookup/usage.ts';

/** A pack without a price, or a tool whose price a plan would count. */
export const missingPrice: Check = {
  code: 'missing-price',
  gravity: 'incomplete',
  find: (context) => [...ofMaterials(context), ...ofTools(context)],
};

function ofMaterials({ workspace, origins }: Context): readonly Finding[] {
  return Object.values(workspace.materials).flatMap(({ id, name, packs, free }) =>
    packs.flatMap(({ price, priced, holds }, i) =>
      price || free
        ? []
        : [
            {
              ...variantOf(undefined, priced),
              places: [origins.at(`materials/${id}/packs/${i}/holds`)] as const,
              facts: { material: name, holds: printHolding(holds), ...(priced ? { priced } : {}) },
            },
          ],
    ),
  );
}

/** Of a tool that wears off, or that the program would have to buy for a guide. */
function ofTools({ workspace, origins }: Context): readonly Finding[] {
  return Object.values(workspace.tools)
    .filter(({ price }) => !price)
    .filter(({ id, lasts }) => lasts !== undefined || workspace.program.owned[id] === undefined)
    .filter(({ id }) => guidesTouched(`tools/${id}.yaml`, workspace).length > 0)
    .map(({ id, name, priced }) => ({
      ...variantOf('tool', priced),
      places: [origins.at(`tools/${id}/name`)],
      facts: { tool: name, ...(priced ? { priced } : {}) },
    }));
}

/** The day is there already: it is not to be written a second time. */
function variantOf(kind: 'tool' | undefined, priced: IsoDate | undefined): { readonly variant?: string } {
  const words = [kind, priced && 'dated'].filter((word) => word !== undefined);
  return words.length === 0 ? {} : { variant: words.join('-') };
}
