import { copyBoard, emptyBoard, isPlaced, put, takeOff, timesOn, type Board } from '../ground/board.ts';
import { isIdeal, isLeft, judged, patience, type Left } from './budget.ts';
import type { InPieces } from '../../../in-pieces.ts';
import type { Draw } from '../../draw.ts';
import type { Ground } from '../ground/ground.ts';
import { orderWithin } from '../placing/order-within.ts';
import { beginAnew, forgetFull, placeBlock } from '../placing/place-block.ts';
import { compareScores, type Score, type Scored } from './score.ts';
import type { Search } from './search.ts';

/** A schedule on a board that changes stretch by stretch. */
interface Bench extends Search {
  /** All jobs, in the order of their starts. */
  readonly order: number[];
  /** The schedule as it was before the stretch that is tried. */
  readonly kept: Board;
  best: Scored;
}

/**
 * A schedule made better stretch by stretch: the jobs of a stretch leave the board and come back in another order,
 * while all others keep their places. Its cost does not grow with the schedule.
 *
 *     |saw 1|drill 1|saw 2|drill 2|paint 1|   ->   |saw 1|saw 2|drill 1|drill 2|paint 1|
 *
 * @source Large neighbourhood search: Shaw, Using constraint programming and local search methods to solve vehicle
 *         routing problems (1998); from memory.
 */
export function* rework(work: Search, given: Scored, left: Left): InPieces<Scored> {
  const { ground } = work;
  const { starts } = given;
  const { making } = work.placer;
  beginAnew(making, mostTries, false);
  const order = [...starts.keys()].sort((a, b) => starts[a]! - starts[b]!);
  for (const job of order) put(making.board, job, starts[job]!);
  const bench: Bench = { ...work, order, kept: emptyBoard(ground), best: given };
  copyBoard(making.board, bench.kept);
  const waiting = patience(left, partWithoutBetter);
  while (isLeft(left) && !waiting.isOver() && !isIdeal(ground, bench.best.score)) {
    const before = bench.best.score;
    making.work = 0;
    tryStretch(bench);
    left.schedules--;
    left.placements -= making.work + order.length / judged;
    if (compareScores(bench.best.score, before, 4) < 0) waiting.renew();
    yield;
  }
  return bench.best;
}

const partWithoutBetter = 1 / 4;
/** Places looked for to put one stretch back; blocks bound both ways could be tried for ever. */
const mostTries = 500;

function tryStretch(bench: Bench): void {
  const { placer, ground, kept, order, best, draw } = bench;
  const { making } = placer;
  const { board } = making;
  const { blocks, blockOf } = ground.prepared;
  const from = draw(order.length);
  const to = from + 2 + draw(2 << draw(6));
  const chosen = [...new Set(order.slice(from, to).map((job) => blockOf[job]!))];
  for (const block of chosen) for (const job of blocks[block]!) takeOff(board, job);
  making.inLine = draw(3) > 0;
  making.front = kept.starts[order[from]!]!;
  forgetFull(making);
  if (putBack(bench, inOtherOrder(chosen, ground, draw))) {
    const next = bench.judge.score(board, best.score);
    if (isWelcome(next, best.score)) {
      order.sort((a, b) => board.starts[a]! - board.starts[b]!);
      copyBoard(board, kept);
      if (compareScores(next, best.score) >= 0) return;
      bench.best = { ...timesOn(board), score: next };
      return;
    }
  }
  copyBoard(kept, board);
}

/** No later than the best, and with one change of task more at most: from there the next step may lead further. */
function isWelcome(next: Score, best: Score): boolean {
  return next[0] <= best[0] && next[1] <= best[1] && next[2] <= best[2] + 1;
}

/** The blocks kind by kind, one kind drawn to be the first or the last; or one block elsewhere. */
function inOtherOrder(chosen: readonly number[], { prepared }: Ground, draw: Draw): number[] {
  const { blocks, kinds } = prepared;
  if (draw(4) === 0) {
    const at = draw(chosen.length);
    return chosen.toSpliced(at, 1).toSpliced(draw(chosen.length), 0, chosen[at]!);
  }
  const kindOf = (block: number): number => kinds[blocks[block]![0]!]!;
  const found = [...new Set(chosen.map(kindOf))];
  const drawn = found.splice(draw(found.length), 1);
  const inTurn = draw(2) === 0 ? [...drawn, ...found] : [...found, ...drawn];
  return chosen.toSorted((a, b) => inTurn.indexOf(kindOf(a)) - inTurn.indexOf(kindOf(b)));
}

/** Gives blocks their places again, the first that can come first; whether all have one. */
function putBack({ placer, ground }: Bench, wanted: readonly number[]): boolean {
  const { making, pushed } = placer;
  const waiting = [...wanted];
  for (let at = 0; at < waiting.length;) {
    const block = ground.prepared.blocks[waiting[at]!]!;
    const jobs = orderWithin(block, ground.earliest, pushed);
    const isIn = isReady(making.board, waiting[at]!) && !placeBlock(making, jobs);
    if (isIn) waiting.splice(at, 1);
    at = isIn ? 0 : at + 1;
  }
  return waiting.length === 0;
}

/** Whether all that a block must wait for has its place. */
function isReady(board: Board, block: number): boolean {
  const { blocks, into, blockOf } = board.prepared;
  return blocks[block]!.every((job) =>
    into[job]!.every(({ from, least }) => least < 0 || blockOf[from] === block || isPlaced(board, from)),
  );
}
