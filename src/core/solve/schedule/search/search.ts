import { drawer, type Draw } from '../../draw.ts';
import { timesOn } from '../ground/board.ts';
import { families } from '../ground/families.ts';
import type { Ground } from '../ground/ground.ts';
import { consecutive } from './consecutive.ts';
import { inTurn } from './in-turn.ts';
import { later } from './later.ts';
import { movesOf } from './moves.ts';
import { place, placer, type Placer } from '../placing/placing.ts';
import type { Obstacle } from '../problem.ts';
import { isIdeal, isLeft, judged, type Left } from './budget.ts';
import { rework } from './rework.ts';
import { rankOf, rules, type Line } from './rules.ts';
import { compareScores, judgeOf, latestEnd, type Judge, type Scored } from './score.ts';

interface Candidate extends Scored {
  readonly line: Line;
  readonly work: number;
}

/** What a search works with, all along. */
export interface Search {
  readonly ground: Ground;
  readonly draw: Draw;
  readonly judge: Judge;
  readonly placer: Placer;
  readonly inTurn: (line: Line) => Line;
}

/**
 * The best schedule found: one by each rule (where no rule leads to one, by lines drawn at random), then small changes
 * of the line of the best one, then of stretches of it; at last all is moved as late as it may. Same problem, same
 * schedule.
 *
 *     rules -> changes of the line (few jobs: most of the budget) -> stretches (many jobs: most of it) -> later
 */
export function search(ground: Ground, budget: number): Scored | { stuck: Obstacle } {
  const { placements = Infinity, latest } = ground.problem;
  const left: Left = { schedules: budget, placements };
  const work = {
    ground,
    draw: drawer(),
    judge: judgeOf(ground),
    placer: placer(ground),
    inTurn: inTurn(ground),
  };
  const first = firstSchedule(work, left);
  if ('stuck' in first) return first;
  const jobs = first.line.length;
  const [forStretches, forLines] = shared(left, jobs / (jobs + evenJobs));
  const better = improve(work, first, forLines);
  const found = rework(work, better, forStretches);
  return consecutive(work, latest ? later(work, found) : found);
}

/** With so many jobs, changes of stretches and of the whole line have equal shares of the budget. */
const evenJobs = 100;

function shared({ schedules, placements }: Left, part: number): [Left, Left] {
  const some = Math.floor(schedules * part);
  return [
    { schedules: some, placements: placements * part },
    { schedules: schedules - some, placements: placements * (1 - part) },
  ];
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

/** So many lines at random are tried where no rule leads to a schedule. */
const mostShuffled = 20;

function improve(work: Search, first: Candidate, left: Left): Candidate {
  const { ground, draw } = work;
  const moves = movesOf(families(ground.prepared), ground.prepared.kinds);
  let best = first;
  while (isLeft(left) && !isIdeal(ground, best.score)) {
    const line = moves[draw(moves.length)]!(best.line, draw);
    const next = placeLine(work, line, left, best, draw(2) === 0);
    if ('stuck' in next || compareScores(next.score, best.score, 4) > 0) continue;
    best = { ...next, line: inOrderOfStarts(next) };
  }
  return best;
}

/** The line that a schedule itself suggests: changes of it change more. */
function inOrderOfStarts({ line, starts }: Candidate): Line {
  return line.toSorted((a, b) => starts[a]! - starts[b]!);
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

/**
 * A schedule by a line, unless it turns out worse than the best one, or takes far more work; the first may take more
 * than is left.
 */
function placeLine(
  { ground, placer, judge, inTurn }: Search,
  given: Line,
  left: Left,
  best: Candidate | undefined,
  inLine = false,
): Candidate | { stuck: Obstacle } {
  const line = inTurn(given);
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
  return { line, work: making.work, ...timesOn(making.board), score };
}
