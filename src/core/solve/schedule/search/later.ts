import { groundOf, type Ground } from '../ground/ground.ts';
import { mirrored } from '../mirrored.ts';
import { place } from '../placing/placing.ts';
import { compareScores, score, type Scored } from './score.ts';

/**
 * The same schedule with every job as late as it can be: nothing ends later than the whole, and nobody
 * changes task more often. The given one where that cannot be had.
 *
 *     |saw|     |drill|paint|   ->        |saw|drill|paint|
 */
export function later(ground: Ground, given: Scored): Scored {
  const { starts, ends } = given;
  const { problem, prepared } = ground;
  const at = given.score[3];
  const deadlines = prepared.deadlines.map((minute) => Math.min(minute, at));
  const mirror = groundOf(mirrored({ ...problem, deadlines }, at));
  if ('impossible' in mirror) return given;
  const order = [...ends.keys()].sort((a, b) => ends[b]! - ends[a]! || starts[b]! - starts[a]!);
  const rank: number[] = [];
  order.forEach((job, index) => (rank[job] = index));
  let best = given;
  for (const inLine of [true, false]) {
    const placed = place(mirror, rank, 4 * order.length + 100, inLine);
    if ('stuck' in placed) continue;
    const starts = placed.ends.map((end) => at - end);
    const ends = placed.starts.map((start) => at - start);
    if (starts.some((start, job) => start < prepared.releases[job]!)) continue;
    const late = { starts, ends, score: score(ground, { starts, ends }, order.toReversed()) };
    if (compareScores(late.score, best.score) < 0) best = late;
  }
  return best;
}
