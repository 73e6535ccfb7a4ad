import type { InPieces } from '../../../in-pieces.ts';
import type { Times } from '../mirrored.ts';
import { asEarlyBy, asLate } from './justified.ts';
import { compareScores, type Scored } from './score.ts';
import type { Search } from './search.ts';

/**
 * The same schedule with every job as early as it can be, where that is no worse: nothing that has time to spare is
 * then left at its end.
 *
 *     |saw|     |drill|paint|   ->   |saw|drill|paint|
 */
export function* sooner(work: Search, given: Scored): InPieces<Scored> {
  return best(work, given, yield* asEarlyBy(work.placer, given, [true, false]));
}

/**
 * The same schedule with every job as late as it can be: nothing ends later than the whole, and nobody
 * changes task more often. The given one where that cannot be had.
 *
 *     |saw|     |drill|paint|   ->        |saw|drill|paint|
 */
export function* later(work: Search, given: Scored): InPieces<Scored> {
  return best(work, given, yield* asLate(work.ground.problem, given, [true, false]));
}

function best({ judge }: Search, given: Scored, shifted: readonly Times[]): Scored {
  const scored = shifted.map((times) => ({ ...times, score: judge.score(times) }));
  return [given, ...scored].reduce((a, b) => (compareScores(b.score, a.score) < 0 ? b : a));
}
