import type { InPieces } from '../../../in-pieces.ts';
import { drawer, type Draw } from '../../draw.ts';
import { timesOn } from '../ground/board.ts';
import type { Ground } from '../ground/ground.ts';
import { place, placer, type Placer } from '../placing/placing.ts';
import type { Obstacle } from '../problem.ts';
import { isIdeal, isLeft, judged, patience, type Left } from './budget.ts';
import { consecutive } from './consecutive.ts';
import { changed } from './moves.ts';
import { rework } from './rework.ts';
import { rankOf, rules, type Line } from './rules.ts';
import { compareScores, judgeOf, latestEnd, type Judge, type Scored } from './score.ts';
import { later, sooner } from './sooner-and-later.ts';

/** What a search works with, all along. */
export interface Search {
  readonly ground: Ground;
  readonly draw: Draw;
  readonly judge: Judge;
  readonly placer: Placer;
}

/**
 * The best schedule found: one by each rule (where no rule leads to one, by lines drawn at random), then stretch by
 * stretch made better; at last all is moved as early, or where that is wanted as late, as it may, and numbers run on.
 * Same problem, same schedule.
 *
 *     rules -> improve -> rework -> sooner -> later -> consecutive
 */
export function* searching(ground: Ground, budget: number): InPieces<Scored | { stuck: Obstacle }> {
  const { placements = Infinity, latest } = ground.problem;
  const left: Left = { schedules: budget, placements };
  const work = { ground, draw: drawer(), judge: judgeOf(ground), placer: placer(ground) };
  const first = yield* firstSchedule(work, left);
  if ('stuck' in first) return first;
  const jobs = first.line.length;
  const some = share(left, fewJobs / (jobs + fewJobs) / 4);
  const better = yield* improve(work, first, some);
  const found = yield* sooner(work, yield* rework(work, better, left));
  return yield* consecutive(work, latest ? yield* later(work, found) : found);
}

/** With so many jobs an eighth of the budget is for changes of the line, with fewer up to a quarter. */
const fewJobs = 100;

/** Takes a part of what is left. */
function share(left: Left, part: number): Left {
  const some = { schedules: Math.floor(left.schedules * part), placements: left.placements * part };
  left.schedules -= some.schedules;
  if (some.placements < Infinity) left.placements -= some.placements;
  return some;
}

function* firstSchedule(work: Search, left: Left): InPieces<Candidate | { stuck: Obstacle }> {
  let best: Candidate | undefined;
  let stuck: Obstacle | undefined;
  const tryLine = (line: Line): void => {
    const found = placeLine(work, line, left, best);
    if (found && 'stuck' in found) stuck ??= found.stuck;
    else if (found && (!best || compareScores(found.score, best.score) < 0)) best = found;
  };
  for (const line of rules(work.ground)) {
    if (isLeft(left) || !(best ?? stuck)) tryLine(line);
    yield;
  }
  const line = [...work.ground.prepared.durations.keys()];
  for (let tried = 0; !best && tried < mostShuffled && isLeft(left); tried++) {
    tryLine(shuffled(line, work.draw));
    yield;
  }
  return best ?? { stuck: stuck! };
}

/** As long as nothing is better, changes of the line of the best one; its line is the order of its starts. */
function* improve(work: Search, first: Candidate, left: Left): InPieces<Candidate> {
  const { ground, draw } = work;
  const waiting = patience(left, partWithoutBetter);
  let best = first;
  while (isLeft(left) && !waiting.isOver() && !isIdeal(ground, best.score)) {
    const line = changed(best.line, ground.prepared.kinds, draw);
    const next = placeLine(work, line, left, best, draw(2) === 0);
    yield;
    if (!next || 'stuck' in next) continue;
    if (compareScores(next.score, best.score, 4) < 0) waiting.renew();
    best = { ...next, line: next.line.toSorted((a, b) => next.starts[a]! - next.starts[b]!) };
  }
  return best;
}

const partWithoutBetter = 2 / 5;

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
 * A schedule by a line; nothing where it turns out worse than the best one. It is given up where it takes far more work;
 * the first may take more than is left.
 */
function placeLine(
  { ground, placer, judge }: Search,
  line: Line,
  left: Left,
  best: Candidate | undefined,
  inLine = false,
): Candidate | { stuck: Obstacle } | undefined {
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
  const score = judge.score(making.board, best?.score);
  if (best && compareScores(score, best.score, 4) > 0) return undefined;
  return { line, work: making.work, ...timesOn(making.board), score };
}
