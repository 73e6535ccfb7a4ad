import { drawer } from '../../../../../src/core/solve/draw.ts';
import { groundOf } from '../../../../../src/core/solve/schedule/ground/ground.ts';
import { placer } from '../../../../../src/core/solve/schedule/placing/placing.ts';
import type { ScheduleProblem } from '../../../../../src/core/solve/schedule/problem.ts';
import { judgeOf, type Scored } from '../../../../../src/core/solve/schedule/search/score.ts';
import type { Search } from '../../../../../src/core/solve/schedule/search/search.ts';

/** A search at its beginning. */
export function searchOf(problem: ScheduleProblem): Search {
  const ground = groundOf(problem);
  if ('impossible' in ground) throw new Error(JSON.stringify(ground));
  return { ground, draw: drawer(), judge: judgeOf(ground), placer: placer(ground) };
}

/** The schedule with these starts, when no job is split. */
export function scored({ ground, judge }: Search, starts: readonly number[]): Scored {
  const ends = starts.map((start, job) => start + ground.prepared.durations[job]!);
  return { starts, ends, score: judge.score({ starts, ends }) };
}
