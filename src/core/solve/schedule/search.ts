import type { Ground } from './ground.ts';
import { place } from './placing.ts';
import type { Obstacle } from './problem.ts';
import { drawer, type Draw } from './draw.ts';
import { rules, type Line } from './rules.ts';
import { compareScores, score, type Score } from './score.ts';

/** A schedule with the line of jobs that led to it. */
export interface Found {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly score: Score;
}

/**
 * The best schedule found: one by each rule, then from the best one on by small changes of the line, each kept when the
 * schedule is no worse. Same problem, same schedule.
 */
export function search(ground: Ground, lowerBound: number): Found | { stuck: Obstacle } {
  const first = firstSchedules(ground);
  return 'stuck' in first ? first : improve(ground, first, lowerBound);
}

interface Candidate extends Found {
  readonly line: Line;
  /** Places looked for. */
  readonly work: number;
}

function firstSchedules(ground: Ground): Candidate | { stuck: Obstacle } {
  const mostWork = 2000 + 20 * ground.prepared.durations.length;
  let best: Candidate | undefined;
  let stuck: Obstacle | undefined;
  for (const rule of rules) {
    const found = placeLine(ground, rule(ground), mostWork);
    if ('stuck' in found) stuck ??= found.stuck;
    else if (!best || compareScores(found.score, best.score) < 0) best = found;
  }
  return best ?? { stuck: stuck! };
}

/** Places looked for in all changed schedules together: well under a second. */
const mostWork = 60_000;
/** And after the last improvement, beside as many as it took until then. */
const leastPatience = 10_000;

function improve(ground: Ground, first: Candidate, lowerBound: number): Candidate {
  const draw = drawer();
  let [best, work, workAtBest] = [first, 0, 0];
  for (let tried = rules.length; tried < (ground.problem.budget ?? 20_000); tried++) {
    const isProven = best.score[0] === 0 && best.score[1] <= lowerBound;
    if (isProven || work > mostWork || work > 2 * workAtBest + leastPatience) break;
    const next = placeLine(ground, changed(best.line, draw), 4 * best.work);
    work += next.work;
    if ('stuck' in next) continue;
    const better = compareScores(next.score, best.score);
    if (better < 0) workAtBest = work;
    if (better <= 0) best = next;
  }
  return best;
}

/** A line in which one job, drawn at random, stands elsewhere. */
function changed(line: Line, draw: Draw): Line {
  const [from, to] = [draw(line.length), draw(line.length)];
  const without = line.toSpliced(from, 1);
  return without.toSpliced(to, 0, line[from]!);
}

function placeLine(
  ground: Ground,
  line: Line,
  mostWork: number,
): Candidate | { stuck: Obstacle; work: number } {
  const rank = new Array<number>(line.length);
  line.forEach((job, place) => (rank[job] = place));
  const placed = place(ground, rank, mostWork);
  if ('stuck' in placed) return placed;
  return { ...placed, line, score: score(ground.prepared, placed.starts, placed.ends) };
}
