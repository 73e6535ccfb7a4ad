import type { ProblemFamily } from './sentences.ts';

/** What is not known of a price, or no longer. Prices are never guessed. */
export const priceFindings: ProblemFamily = {
  'currency-without-rate': {
    says: 'Something costs {currency}, and the program has no rate to turn that into {own}.',
    why: 'Until there is one, it counts as a price that is not known.',
    write: 'exchange:\n  {currency}:\n    rate: …   {own} for 1 {currency}\n    on: …   the day of that rate',
  },
  'currency-without-rate.more': {
    says: 'Something costs {currency}, and the program has no rate to turn that into {own}.',
    why: 'Until there is one, it counts as a price that is not known.',
    write: '{currency}:\n  rate: …   {own} for 1 {currency}\n  on: …   the day of that rate, below exchange',
  },
  'missing-pack': {
    says: 'It is not said in which packs {material} is sold, so none can be bought.',
    write:
      'packs:\n  - holds: …\n    price: …\n    priced: …   the day on which you saw that price\nfree: yes   if it costs nothing, like water from the tap',
  },
  'missing-price': {
    says: 'The pack of {holds} of {material} has no price, so the sums that it enters are “at least”.',
    write: 'price: …\npriced: …   the day on which you saw that price',
  },
  'missing-price.dated': {
    says: 'The pack of {holds} of {material} has no price, so the sums that it enters are “at least”.',
    write: 'price: …   as it was on {priced}; the day is there already',
  },
  'missing-price.tool-dated': {
    says: '{tool} has no price, so what it adds to the cost is left out.',
    write: 'price: …   as it was on {priced}; the day is there already',
  },
  'missing-price.tool': {
    says: '{tool} has no price, so what it adds to the cost is left out.',
    write: 'price: …\npriced: …   the day on which you saw that price',
  },
  'old-price': {
    says: 'The price of {name}, {price}, is of {priced}: more than a year old on {today}.',
    write: 'price: …\npriced: …   the day on which you looked again',
  },
  'price-of-a-day-to-come': {
    says: 'The price of {name}, {price}, is of {priced}, which is after today, {today}.',
    why: 'How old a price is counts from the day on which somebody saw it.',
    write: 'priced: …   the day on which you saw that price',
  },
  'undated-price': {
    says: 'The price of {name}, {price}, has no date, so nobody knows how old it is.',
    write: 'priced: …   the day on which you saw that price',
  },
};
