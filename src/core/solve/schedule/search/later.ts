import { groundOf } from '../ground/ground.ts';
import { mirrored } from '../mirrored.ts';
import { place, placer } from '../placing/placing.ts';
import { compareScores, type Scored } from './score.ts';
import type { Search } from './search.ts';
import { rankOf } from './rules.ts';

/**
 * The same schedule with every job as late as it can be: nothing ends later than the whole, and nobody
 * changes task more often. The given one where that cannot be had.
 *
 *     |saw|     |drill|paint|   ->        |saw|drill|paint|
 */
export function later({ ground, judge }: Search, given: Scored): Scored {
  const { starts, ends } = given;
  const { problem, prepared } = ground;
  const at = given.score[3];
  const deadlines = prepared.deadlines.map((minute) => Math.min(minute, at));
  const mirror = groundOf(mirrored({ ...problem, deadlines }, at));
  if ('impossible' in mirror) return given;
  const line = [...prepared.durations.keys()].sort((a, b) => ends[b]! - ends[a]! || starts[b]! - starts[a]!);
  const placing = placer(mirror);
  const most = { work: 4 * line.length + 100, end: at - prepared.from, late: 0 };
  let best = given;
  for (const inLine of [true, false]) {
    if (place(placing, rankOf(line), most, inLine)) continue;
    const { board } = placing.making;
    const times = {
      starts: board.ends.map((end) => at - end),
      ends: board.starts.map((start) => at - start),
    };
    const late = { ...times, score: judge.score(times) };
    if (compareScores(late.score, best.score) < 0) best = late;
  }
  return best;
}
