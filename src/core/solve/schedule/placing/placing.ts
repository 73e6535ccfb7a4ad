import { takeOff } from '../ground/board.ts';
import type { Halt } from './find-place.ts';
import type { Basis } from '../ground/ground.ts';
import { orderWithin, pushedWithin } from './order-within.ts';
import { beginAnew, forgetFull, newMaking, placeBlock, type Making } from './place-block.ts';
import type { Obstacle } from '../problem.ts';
import { queue, type Queue } from './queue.ts';

/** What makes schedules, one after the other, on one board. */
export interface Placer {
  readonly making: Making;
  readonly line: Queue;
  readonly pushed: readonly (readonly number[])[];
}

/** How far a schedule may go before it is given up. */
export interface Most {
  /** Places looked for. */
  readonly work: number;
  /** The end of everything, as far as it is certain, and minutes of one job past its deadline. */
  readonly end: number;
  readonly late: number;
}

export function placer(ground: Basis): Placer {
  return { making: newMaking(ground), line: queue(ground.prepared), pushed: pushedWithin(ground) };
}

/**
 * One schedule, on the board of the placer: the jobs take their earliest places in turn, in the order of `rank` as far
 * as lags allow.
 *
 * Jobs tied both ways are placed as one block. When a job cannot start in time after an earlier one, or a hold cannot
 * stretch to it, the earlier one is moved later and all since is placed again. A block that needs something held
 * without a known end waits until it is given back; others go on meanwhile.
 *
 * @param rank  For each job its place in the line, each number once.
 * @param inLine  Whether no work of the crew begins before what comes earlier in the line.
 * @returns Why there is none, or none that is good enough.
 * @source Serial generation: Kolisch, Serial and parallel resource-constrained project scheduling methods revisited,
 *         EJOR 90 (1996). Moving jobs later: the unscheduling step of Neumann and Schwindt for greatest lags, as in
 *         Neumann, Schwindt and Zimmermann, Project Scheduling with Time Windows and Scarce Resources (2003). Both
 *         from memory.
 */
export function place(placer: Placer, rank: Int32Array, most: Most, inLine: boolean): Obstacle | undefined {
  const { making, line, pushed } = placer;
  const { board } = making;
  const { blocks } = board.prepared;
  beginAnew(making, most.work, inLine);
  line.lineUp(rank);
  let stuck: Obstacle | undefined;
  for (let block = line.next(); block >= 0; block = line.next()) {
    const jobs = blocks[block]!;
    const halt = placeBlock(making, orderWithin(jobs, rank, pushed));
    if (!halt) {
      if (isTooLate(making, jobs, most)) return { because: 'deadline', jobs };
      line.placed(block);
      wakeWaiting(making, line, jobs);
      continue;
    }
    stuck = obstacle(board.ground, block, halt);
    if ('never' in halt || making.work > most.work) return stuck;
    if ('waitsFor' in halt) line.park(block, halt.waitsFor);
    else goBack(making, line, halt);
  }
  const isWhole = !board.starts.some((start) => Number.isNaN(start));
  return isWhole ? undefined : stuck;
}

function isTooLate({ board }: Making, jobs: readonly number[], { end, late }: Most): boolean {
  const { ground, prepared, starts, ends } = board;
  for (const job of jobs) {
    if (starts[job]! + ground.tails[job]! > end || ends[job]! > end) return true;
    if (ends[job]! - prepared.deadlines[job]! > late) return true;
  }
  return false;
}

/** Lets a block come that waits for what this one has given back. */
function wakeWaiting(making: Making, line: Queue, jobs: readonly number[]): void {
  const { prepared, heldUntil } = making.board;
  for (const job of jobs) {
    for (const hold of prepared.holdsOf[job]!) {
      const until = heldUntil[hold]!;
      if (!(until < Infinity)) continue;
      line.wake(prepared.holds[hold]!.usage);
      forgetFull(making, until);
    }
  }
}

/** Takes all off the board since the job that must come later. */
function goBack(making: Making, line: Queue, { move, to }: Extract<Halt, { move: unknown }>): void {
  const { board, lower } = making;
  const { blocks, blockOf } = board.prepared;
  forgetFull(making);
  making.front = -Infinity;
  for (const block of line.goBackTo(blockOf[move]!)) {
    for (const job of blocks[block]!) takeOff(board, job);
  }
  lower[move] = Math.max(lower[move]!, to);
}

function obstacle({ problem, prepared }: Basis, block: number, halt: Halt): Obstacle {
  const jobs = prepared.blocks[block]!;
  if ('move' in halt) return { because: 'lags', jobs: [...new Set([halt.move, ...jobs])] };
  if ('never' in halt) return { because: jobs.length > 1 ? 'lags' : 'calendar', jobs };
  const isResource = halt.waitsFor < problem.capacities.length;
  return isResource ? { because: 'capacity', jobs, resource: halt.waitsFor } : { because: 'exclusion', jobs };
}
