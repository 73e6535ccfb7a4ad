import { addMonths } from '../core/time/day.ts';
import type { Check } from './check.ts';
import { pricedThings } from './lookup/priced-things.ts';
import { written } from './lookup/written.ts';

/** A price from more than a year ago. */
export const oldPrice: Check = {
  code: 'old-price',
  gravity: 'calendar',
  find: (context) =>
    pricedThings(context).flatMap(({ name, priced, at, dayAt }) =>
      priced !== undefined && addMonths(priced, 12) < context.today
        ? [{ places: [dayAt, at], facts: { name, price: written(at), priced, today: context.today } }]
        : [],
    ),
};
