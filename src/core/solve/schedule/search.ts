import { drawer, type Draw } from './draw.ts';
import { families } from './families.ts';
import type { Ground } from './ground.ts';
import { place } from './placing.ts';
import type { Obstacle } from './problem.ts';
import { rules, type Line } from './rules.ts';
import { compareScores, score, type Score } from './score.ts';

/** A schedule with the line of jobs that led to it. */
export interface Found {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  readonly score: Score;
}

/**
 * The best schedule found: one by each rule (where no rule leads to one, by lines drawn at random), then from the best
 * one on by small changes of the line, each kept when the schedule is no worse. Same problem, same schedule.
 */
export function search(ground: Ground, lowerBound: number): Found | { stuck: Obstacle } {
  const draw = drawer();
  const first = firstSchedule(ground, draw);
  return 'stuck' in first ? first : improve(ground, first, lowerBound, draw);
}

interface Candidate extends Found {
  readonly line: Line;
  /** Places looked for. */
  readonly work: number;
}

function firstSchedule(ground: Ground, draw: Draw): Candidate | { stuck: Obstacle } {
  const jobs = ground.prepared.durations.length;
  let best: Candidate | undefined;
  let stuck: Obstacle | undefined;
  for (const rule of rules.slice(0, Math.max(1, mostSchedules(ground)))) {
    const found = placeLine(ground, rule(ground), 2000 + 20 * jobs);
    if ('stuck' in found) stuck ??= found.stuck;
    else if (!best || compareScores(found.score, best.score) < 0) best = found;
  }
  for (
    let tried = 0;
    !best && tried < Math.min(mostShuffled, mostSchedules(ground) - rules.length);
    tried++
  ) {
    const found = placeLine(ground, shuffled(rules[0]!(ground), draw), 200 + 10 * jobs);
    if (!('stuck' in found)) best = found;
  }
  return best ?? { stuck: stuck! };
}

/** So many lines at random are tried where no rule leads to a schedule. */
const mostShuffled = 20;

function mostSchedules({ problem }: Ground): number {
  return problem.budget ?? 20_000;
}

/** Places looked for in all changed schedules together: well under a second. */
const mostWork = 200_000;
/** As many again as the last improvement took, and this beside, without another: that is the end. */
const leastPatience = (jobs: number): number => Math.min(30_000, 500 * jobs);

function improve(ground: Ground, first: Candidate, lowerBound: number, draw: Draw): Candidate {
  const familyOf = families(ground.prepared);
  const patience = leastPatience(first.line.length);
  let [best, work, workAtBest] = [first, 0, 0];
  for (let tried = rules.length; tried < mostSchedules(ground); tried++) {
    const isProven = best.score[0] === 0 && best.score[1] <= lowerBound;
    if (isProven || work > mostWork || work > 2 * workAtBest + patience) break;
    const next = placeLine(ground, changed(best.line, familyOf, draw), 4 * best.work);
    work += next.work;
    if ('stuck' in next) continue;
    const better = compareScores(next.score, best.score);
    if (better < 0) workAtBest = work;
    if (better <= 0) best = { ...next, line: inOrderOfStarts(next) };
  }
  return best;
}

/** The line that a schedule itself suggests: changes of it change more. */
function inOrderOfStarts({ line, starts }: Candidate): Line {
  return line.toSorted((a, b) => starts[a]! - starts[b]!);
}

/** A line in which one job, or all its family in the order they had, stands elsewhere. */
function changed(line: Line, familyOf: readonly (readonly number[])[], draw: Draw): Line {
  const job = line[draw(line.length)]!;
  const moved = new Set(draw(2) === 0 ? [job] : familyOf[job]);
  const rest = line.filter((other) => !moved.has(other));
  return rest.toSpliced(draw(rest.length + 1), 0, ...line.filter((other) => moved.has(other)));
}

/** A line in any order. @source Fisher and Yates, in Durstenfeld's form (1964); from memory. */
function shuffled(line: Line, draw: Draw): Line {
  const mixed = [...line];
  for (let at = mixed.length - 1; at > 0; at--) {
    const other = draw(at + 1);
    [mixed[at], mixed[other]] = [mixed[other]!, mixed[at]!];
  }
  return mixed;
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
