import { expect, it } from 'vitest';
import { exact } from '../../src/core/quantity/exact.ts';
import { largestRemainder } from '../../src/core/quantity/round.ts';

/**
 * The seats of the first apportionment bill of the United States (1792): 120, by Hamilton's method, for the populations
 * of the census of 1790.
 *
 * Source: M. L. Balinski and H. P. Young, Fair Representation (2nd ed. 2001), appendix B; figures from memory, worked
 * again by hand: the whole parts come to 111, and the nine largest fractions are those of New Jersey (0.959), Virginia,
 * Connecticut, South Carolina, Delaware, Vermont, Massachusetts, North Carolina and New Hampshire (0.707).
 */
const states: readonly (readonly [name: string, people: number, seats: number])[] = [
  ['Connecticut', 236_841, 8],
  ['Delaware', 55_540, 2],
  ['Georgia', 70_835, 2],
  ['Kentucky', 68_705, 2],
  ['Maryland', 278_514, 9],
  ['Massachusetts', 475_327, 16],
  ['New Hampshire', 141_822, 5],
  ['New Jersey', 179_570, 6],
  ['New York', 331_589, 11],
  ['North Carolina', 353_523, 12],
  ['Pennsylvania', 432_879, 14],
  ['Rhode Island', 68_446, 2],
  ['South Carolina', 206_236, 7],
  ['Vermont', 85_533, 3],
  ['Virginia', 630_560, 21],
];

it('120 seats are shared out by largest remainder as in 1792', () => {
  const seats = largestRemainder(
    120,
    states.map(([, people]) => exact(people)),
  );
  expect(states.map(([name], i) => [name, seats[i]])).toEqual(
    states.map(([name, , shared]) => [name, shared]),
  );
});
