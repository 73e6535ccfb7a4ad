import type { Check } from './check.ts';

/** A mix of which nothing comes out, however often it is mixed. */
export const mixMakesNothing: Check = {
  code: 'mix-makes-nothing',
  gravity: 'stops',
  find: ({ guidesAt }) =>
    guidesAt.flatMap((read) =>
      read.at.mixes.flatMap(({ id, makes }, i) =>
        makes.value === '0'
          ? [{ places: [read.place('mixes', i, 'makes')] as const, facts: { mix: id } }]
          : [],
      ),
    ),
};
