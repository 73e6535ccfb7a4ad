import { drawer, type Draw } from '../../draw.ts';
import { timesOn } from '../ground/board.ts';
import type { Ground } from '../ground/ground.ts';
import { place, placer, type Placer } from '../placing/placing.ts';
import type { Obstacle } from '../problem.ts';
import { isIdeal, isLeft, judged, type Left } from './budget.ts';
import { consecutive } from './consecutive.ts';
import { later } from './later.ts';
import { changed } from './moves.ts';
import { rework } from './rework.ts';
import { rankOf, rules, type Line } from './rules.ts';
import { compareScores, judgeOf, latestEnd, type Judge, type Scored } from './score.ts';

/** What a search works with, all along. */
export interface Search {
  readonly ground: Ground;
  readonly draw: Draw;
  readonly judge: Judge;
  readonly placer: Placer;
}

/**
 * The best schedule found: one by each rule (where no rule leads to one, by lines drawn at random), then stretch by
 * stretch made better; at last all is moved as late as it may, where that is wanted, and numbers run on. Same problem,
 * same schedule.
 *
 *     rules -> rework -> later -> consecutive
 */
export function search(ground: Ground, budget: number): Scored | { stuck: Obstacle } {
  const { placements = Infinity, latest } = ground.problem;
  const left: Left = { schedules: budget, placements };
  const work = { ground, draw: drawer(), judge: judgeOf(ground), placer: placer(ground) };
  const first = firstSchedule(work, left);
  if ('stuck' in first) return first;
  const jobs = first.line.length;
  const some = share(left, evenJobs / (jobs + evenJobs) / 2);
  const better = improve(work, first, some);
  const found = rework(work, better, left);
  return consecutive(work, latest ? later(work, found) : found);
}

/** With so many jobs a quarter of the budget is for changes of the line, with few the half. */
const evenJobs = 100;

/** Takes a part of what is left. */
function share(left: Left, part: number): Left {
  const some = { schedules: Math.floor(left.schedules * part), placements: left.placements * part };
  left.schedules -= some.schedules;
  if (some.placements < Infinity) left.placements -= some.placements;
  return some;
}

function firstSchedule(work: Search, left: Left): Candidate | { stuck: Obstacle } {
  let best: Candidate | undefined;
  let stuck: Obstacle | undefined;
  const tryLine = (line: Line): void => {
    const found = placeLine(work, line, left, best);
    if ('stuck' in found) stuck ??= found.stuck;
    else if (!best || compareScores(found.score, best.score) < 0) best = found;
  };
  for (const line of rules(work.ground)) if (isLeft(left) || !(best ?? stuck)) tryLine(line);
  const line = [...work.ground.prepared.durations.keys()];
  for (let tried = 0; !best && tried < mostShuffled && isLeft(left); tried++)
    tryLine(shuffled(line, work.draw));
  return best ?? { stuck: stuck! };
}

/** As long as nothing is better, changes of the line of the best one; its line is the order of its starts. */
function improve(work: Search, first: Candidate, left: Left): Candidate {
  const { ground, draw } = work;
  let best = first;
  while (isLeft(left) && !isIdeal(ground, best.score)) {
    const line = changed(best.line, ground.prepared.kinds, draw);
    const next = placeLine(work, line, left, best, draw(2) === 0);
    if ('stuck' in next || compareScores(next.score, best.score, 4) > 0) continue;
    best = { ...next, line: next.line.toSorted((a, b) => next.starts[a]! - next.starts[b]!) };
  }
  return best;
}

interface Candidate extends Scored {
  readonly line: Line;
  readonly work: number;
}

/** So many lines at random are tried where no rule leads to a schedule. */
const mostShuffled = 20;

/** A line in any order. @source Fisher and Yates, in Durstenfeld's form (1964); from memory. */
function shuffled(line: Line, draw: Draw): Line {
  const mixed = [...line];
  for (let at = mixed.length - 1; at > 0; at--) {
    const other = draw(at + 1);
    [mixed[at], mixed[other]] = [mixed[other]!, mixed[at]!];
  }
  return mixed;
}

/**
 * A schedule by a line, unless it turns out worse than the best one, or takes far more work; the first may take more
 * than is left.
 */
function placeLine(
  { ground, placer, judge }: Search,
  line: Line,
  left: Left,
  best: Candidate | undefined,
  inLine = false,
): Candidate | { stuck: Obstacle } {
  const { making } = placer;
  const allowed = Math.max(left.placements, 4 * line.length);
  const most = {
    work: Math.min(allowed, best ? 4 * best.work : 2000 + 100 * line.length),
    end: best ? latestEnd(ground, best.score) : Infinity,
    late: best ? best.score[0] : Infinity,
  };
  const stuck = place(placer, rankOf(line), most, inLine);
  left.schedules--;
  left.placements -= making.work + line.length / judged;
  if (stuck) return { stuck };
  return { line, work: making.work, ...timesOn(making.board), score: judge.score(making.board, best?.score) };
}
