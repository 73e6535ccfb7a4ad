import { earliestBeside, isPlaced, put, takeOff, type Board } from './board.ts';
import { findPlace, type Place } from './find-place.ts';
import { earliestBy } from './ties.ts';

/** One schedule in the making. */
export interface Making {
  readonly board: Board;
  /** No job is placed before this minute: its earliest start, or later where it has been moved. */
  readonly lower: number[];
  /** Places looked for so far, and how many may be. */
  work: number;
  readonly mostWork: number;
}

/** Why a block got no place; all its jobs are off the board then. */
export type Halt = Exclude<Place, { readonly start: number }>;

/**
 * Gives the jobs of a block their places in turn. When one cannot follow an earlier one of the block in time, that one
 * is moved later and all are placed again.
 */
export function placeBlock(making: Making, jobs: readonly number[]): Halt | undefined {
  for (;;) {
    const halt = placeEach(making, jobs);
    if (!halt) return undefined;
    for (const job of jobs) if (isPlaced(making.board, job)) takeOff(making.board, job);
    if (!('move' in halt) || !jobs.includes(halt.move[0])) return halt;
    moveLater(making, halt);
    if (making.work > making.mostWork) return { never: true };
  }
}

/** Notes that a job may not come so early again. */
export function moveLater(
  { board, lower }: Making,
  { move: [job, edge], to }: Extract<Place, { move: unknown }>,
): void {
  const earliest = edge === 'start' ? to : board.prepared.times[job]!.startFor(to);
  lower[job] = Math.max(lower[job]!, earliest);
}

function placeEach(making: Making, jobs: readonly number[]): Halt | undefined {
  const { board, lower } = making;
  for (const job of jobs) {
    making.work++;
    const found = findPlace(board, job, earliestBeside(board, job, lower[job]!));
    if (!('start' in found)) return found;
    put(board, job, found.start);
    const late = tooEarlyFor(board, job);
    if (late) return late;
  }
  return undefined;
}

/** A job that has its place too early for one that has just been placed. */
function tooEarlyFor({ prepared, starts, ends }: Board, job: number): Halt | undefined {
  for (const tie of prepared.outOf[job]!) {
    const earliest = earliestBy(tie, starts[job]!, ends[job]!, prepared.times);
    if (starts[tie.to]! < earliest) return { move: [tie.to, 'start'], to: earliest };
  }
  return undefined;
}
