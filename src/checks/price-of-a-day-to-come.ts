import type { Check } from './check.ts';
import { pricedThings } from './lookup/priced-things.ts';
import { written } from './lookup/written.ts';

/** A price that nobody can have seen yet. */
export const priceOfADayToCome: Check = {
  code: 'price-of-a-day-to-come',
  gravity: 'calendar',
  find: (context) =>
    pricedThings(context).flatMap(({ name, priced, at, dayAt }) =>
      priced !== undefined && priced > context.today
        ? [{ places: [dayAt, at], facts: { name, price: written(at), priced, today: context.today } }]
        : [],
    ),
};
