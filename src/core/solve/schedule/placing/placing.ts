import { isPlaced, takeOff } from '../ground/board.ts';
import type { Ground } from '../ground/ground.ts';
import { orderWithin } from './order-within.ts';
import { moveLater, newMaking, placeBlock, type Halt, type Making } from './place-block.ts';
import type { Obstacle } from '../problem.ts';
import { queue, type Queue } from './queue.ts';

/** A schedule, or why there is none; and how many places were looked for. */
export type Placed = { readonly work: number } & (
  { readonly starts: number[]; readonly ends: number[] } | { readonly stuck: Obstacle }
);

/**
 * One schedule: the jobs take their earliest places in turn, in the order of `rank` as far as lags allow.
 *
 * Jobs tied both ways are placed as one block. When a job cannot start in time after an earlier one, or a hold cannot
 * stretch to it, the earlier one is moved later and all since is placed again. A block that needs something held
 * without a known end waits until it is given back; others go on meanwhile. Deadlines are not looked at.
 *
 * @param rank  For each job its place in the line, each number once.
 * @param mostWork  When more places than this have been looked for, it is given up.
 * @source Serial generation: Kolisch, Serial and parallel resource-constrained project scheduling methods revisited,
 *         EJOR 90 (1996). Moving jobs later: the unscheduling step of Neumann and Schwindt for greatest lags, as in
 *         Neumann, Schwindt and Zimmermann, Project Scheduling with Time Windows and Scarce Resources (2003). Both
 *         from memory.
 */
export function place(ground: Ground, rank: readonly number[], mostWork: number, inLine = false): Placed {
  const { blocks, blockOf } = ground.prepared;
  const line = queue(ground.prepared, rank);
  const making = newMaking(ground, mostWork, inLine);
  const stuckAt = (block: number, halt: Halt): Placed => ({
    stuck: obstacle(ground, block, halt),
    work: making.work,
  });
  let lastHalt: Halt = { never: true };
  for (let block = line.next(); block !== undefined; block = line.next()) {
    const halt = placeBlock(making, orderWithin(blocks[block]!, rank, ground));
    if (!halt) {
      line.placed(block);
      wakeWaiting(making, line, block);
      continue;
    }
    lastHalt = halt;
    if ('never' in halt || making.work > mostWork) return stuckAt(block, halt);
    if ('waitsFor' in halt) line.park(block, halt.waitsFor);
    else goBack(making, line, halt);
  }
  const missing = rank.findIndex((_, job) => !isPlaced(making.board, job));
  if (missing >= 0) return stuckAt(blockOf[missing]!, lastHalt);
  return { starts: making.board.starts, ends: making.board.ends, work: making.work };
}

/** Lets a block come that waits for what this one has given back. */
function wakeWaiting({ board, full }: Making, line: Queue, block: number): void {
  const { blocks, holds, holdsOf } = board.prepared;
  for (const job of blocks[block]!) {
    for (const hold of holdsOf[job]!) {
      const until = board.held[hold]?.until ?? Infinity;
      if (until === Infinity) continue;
      line.wake(holds[hold]!.usage);
      for (const [like, known] of full) if (known.until > until) full.delete(like);
    }
  }
}

/** Takes all off the board since the job that must come later. */
function goBack(making: Making, line: Queue, halt: Extract<Halt, { move: unknown }>): void {
  const { blocks, blockOf } = making.board.prepared;
  making.full.clear();
  making.front = -Infinity;
  for (const block of line.goBackTo(blockOf[halt.move[0]]!)) {
    for (const job of blocks[block]!) takeOff(making.board, job);
  }
  moveLater(making, halt);
}

function obstacle({ problem, prepared }: Ground, block: number, halt: Halt): Obstacle {
  const jobs = prepared.blocks[block]!;
  if ('move' in halt) return { because: 'lags', jobs: [...new Set([halt.move[0], ...jobs])] };
  if ('never' in halt) return { because: jobs.length > 1 ? 'lags' : 'calendar', jobs };
  const isResource = halt.waitsFor < problem.capacities.length;
  return isResource ? { because: 'capacity', jobs, resource: halt.waitsFor } : { because: 'exclusion', jobs };
}
