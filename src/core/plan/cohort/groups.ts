import { Bug } from '../../diagnostic.ts';

/**
 * The sizes of the fewest groups of at most so many people, as even as can be, the larger ones first.
 *
 *     20 people, at most 6   ->   5, 5, 5, 5          21, at most 4   ->   4, 4, 4, 3, 3, 3
 *
 * @param people  Whole, zero or more.
 * @param most    Whole, at least one.
 */
export function groupSizes(people: number, most: number): readonly number[] {
  if (most < 1) throw new Bug('a group of nobody', { most });
  const groups = Math.ceil(people / most);
  const [least, larger] = [Math.floor(people / groups), people % groups];
  return Array.from({ length: groups }, (_, group) => (group < larger ? least + 1 : least));
}
