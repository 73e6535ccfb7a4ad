import { asLate } from './justified.ts';
import { compareScores, type Scored } from './score.ts';
import type { Search } from './search.ts';

/**
 * The same schedule with every job as late as it can be: nothing ends later than the whole, and nobody
 * changes task more often. The given one where that cannot be had.
 *
 *     |saw|     |drill|paint|   ->        |saw|drill|paint|
 */
export function later({ ground, judge }: Search, given: Scored): Scored {
  const late = asLate(ground.problem, given, [true, false]);
  const scored = late.map((times) => ({ ...times, score: judge.score(times) }));
  return [given, ...scored].reduce((best, next) => (compareScores(next.score, best.score) < 0 ? next : best));
}
