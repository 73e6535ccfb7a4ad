import type { Check } from './check.ts';
import { pricedThings } from './lookup/priced-things.ts';
import { written } from './lookup/written.ts';

/** A price of which nobody says from which day it is. */
export const undatedPrice: Check = {
  code: 'undated-price',
  gravity: 'incomplete',
  find: (context) =>
    pricedThings(context)
      .filter(({ priced }) => priced === undefined)
      .map(({ name, at }) => ({ places: [at], facts: { name, price: written(at) } })),
};
