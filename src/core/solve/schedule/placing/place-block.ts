import { earliestBeside, emptyBoard, isPlaced, put, takeOff, type Board } from '../ground/board.ts';
import { findPlace, type Place } from './find-place.ts';
import { earliestBy } from '../ground/ties.ts';

/** One schedule in the making. */
export interface Making {
  readonly board: Board;
  /** No job is placed before this minute: its earliest start, or later where it has been moved. */
  readonly lower: number[];
  /** For blocks of one likeness: where the last of them had to go, when it might have come so early. */
  readonly full: Map<number, Full>;
  /** No work of the crew begins before this minute: the last that began, where the line is the order of starts. */
  front: number;
  inLine: boolean;
  /** Places looked for so far, and how many may be. */
  work: number;
  readonly mostWork: number;
}

/** A schedule in which nothing has a place yet. */
export function newMaking(ground: Board['ground'], mostWork: number, inLine = false): Making {
  const lower = [...ground.earliest];
  return { board: emptyBoard(ground), lower, full: new Map(), front: -Infinity, inLine, work: 0, mostWork };
}

interface Full {
  readonly from: readonly number[];
  readonly until: number;
}

/** Why a block got no place; all its jobs are off the board then. */
export type Halt = Exclude<Place, { readonly start: number }>;

/**
 * Gives the jobs of a block their places in turn. When one cannot follow an earlier one of the block in time, that one
 * is moved later and all are placed again.
 */
export function placeBlock(making: Making, jobs: readonly number[]): Halt | undefined {
  const { board, lower, full } = making;
  const like = board.prepared.likeOf[board.prepared.blockOf[jobs[0]!]!]!;
  const before = jobs.map((job) => lower[job]!);
  const isInLine = making.inLine && board.prepared.isCrew[jobs[0]!]!;
  if (isInLine) lower[jobs[0]!] = Math.max(lower[jobs[0]!]!, making.front);
  const from = jobs.map((job) => earliestBeside(board, job, lower[job]!));
  const known = full.get(like);
  const isKnown = known?.from.every((minute, index) => minute <= from[index]!);
  if (isKnown) lower[jobs[0]!] = Math.max(lower[jobs[0]!]!, known!.until);
  const halt = placeWithin(making, jobs);
  if (halt) {
    jobs.forEach((job, index) => (lower[job] = before[index]!));
    return halt;
  }
  const isJoined = isKnown && known!.until >= from[0]!;
  if (isInLine) making.front = board.starts[jobs[0]!]!;
  full.set(like, { from: isJoined ? known!.from : from, until: board.starts[jobs[0]!]! });
  return undefined;
}

function placeWithin(making: Making, jobs: readonly number[]): Halt | undefined {
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
