import { clearBoard, earliestBeside, emptyBoard, isPlaced, takeOff, type Board } from '../ground/board.ts';
import { findPlace, type Halt } from './find-place.ts';
import type { Basis } from '../ground/ground.ts';
import { earliestBy } from '../ground/ties.ts';

/** One schedule in the making, and after it the next. */
export interface Making {
  readonly board: Board;
  /** No job is placed before this minute: its earliest start, or later where it has been moved. */
  readonly lower: Float64Array;
  /** For the jobs of the block that is being placed: how early they might have come, and how early they may. */
  readonly from: Float64Array;
  readonly least: Float64Array;
  /** For each likeness where the last block of it had to go, when it might have come so early. */
  readonly full: readonly Full[];
  /** No work of the crew begins before this minute: the last that began, where the line is the order of starts. */
  front: number;
  inLine: boolean;
  /** Places looked for so far, and how many may be. */
  work: number;
  mostWork: number;
}

/** `until` is `NaN` where nothing is known. */
export interface Full {
  readonly from: Float64Array;
  until: number;
}

export function newMaking(ground: Basis): Making {
  const { blocks, likeOf } = ground.prepared;
  const full: Full[] = [];
  blocks.forEach((block, index) => {
    full[likeOf[index]!] ??= { from: new Float64Array(block.length), until: NaN };
  });
  const longest = blocks.reduce((most, { length }) => Math.max(most, length), 0);
  return {
    board: emptyBoard(ground),
    lower: Float64Array.from(ground.earliest),
    from: new Float64Array(longest),
    least: new Float64Array(longest),
    full,
    front: -Infinity,
    inLine: false,
    work: 0,
    mostWork: Infinity,
  };
}

/** Begins a schedule in which nothing has a place yet. */
export function beginAnew(making: Making, mostWork: number, inLine: boolean): void {
  clearBoard(making.board);
  making.lower.set(making.board.ground.earliest);
  forgetFull(making);
  making.front = -Infinity;
  making.inLine = inLine;
  making.work = 0;
  making.mostWork = mostWork;
}

/** Forgets where blocks had to go later than a minute: there is room again from then on. */
export function forgetFull({ full }: Making, minute = -Infinity): void {
  for (const known of full) if (known.until > minute) known.until = NaN;
}

/**
 * Gives the jobs of a block their places in turn. When one cannot follow an earlier one of the block in time, that one
 * is moved later and all are placed again.
 *
 * @returns Why it has no place; all its jobs are off the board then.
 */
export function placeBlock(making: Making, jobs: readonly number[]): Halt | undefined {
  const { board, lower, from, least } = making;
  const { likeOf, blockOf, isCrew } = board.prepared;
  const first = jobs[0]!;
  const isInLine = making.inLine && isCrew[first]!;
  const full = making.full[likeOf[blockOf[first]!]!]!;
  let isKnown = true;
  for (let at = 0; at < jobs.length; at++) {
    const job = jobs[at]!;
    const front = at === 0 && isInLine ? making.front : -Infinity;
    from[at] = least[at] = earliestBeside(board, job, Math.max(lower[job]!, front));
    if (!(full.from[at]! <= from[at]!)) isKnown = false;
  }
  const isJoined = isKnown && full.until >= from[0]!;
  if (isJoined) least[0] = full.until;
  const halt = placeWithin(making, jobs);
  if (halt) return halt;
  if (isInLine) making.front = board.starts[first]!;
  if (!isJoined) for (let at = 0; at < jobs.length; at++) full.from[at] = from[at]!;
  full.until = board.starts[first]!;
  return undefined;
}

function placeWithin(making: Making, jobs: readonly number[]): Halt | undefined {
  const { board, least } = making;
  for (;;) {
    const halt = placeEach(making, jobs);
    if (!halt) return undefined;
    for (const job of jobs) if (isPlaced(board, job)) takeOff(board, job);
    if (!('move' in halt)) return halt;
    const moved = jobs.indexOf(halt.move);
    if (moved < 0) return halt;
    least[moved] = Math.max(least[moved]!, halt.to);
    if (making.work > making.mostWork) return { never: true };
  }
}

function placeEach(making: Making, jobs: readonly number[]): Halt | undefined {
  const { board, least } = making;
  for (let at = 0; at < jobs.length; at++) {
    const job = jobs[at]!;
    making.work++;
    const earliest = at === 0 ? least[0]! : earliestBeside(board, job, least[at]!);
    const halt = findPlace(board, job, earliest) ?? tooEarlyFor(board, job);
    if (halt) return halt;
  }
  return undefined;
}

/** A job that has its place too early for one that has just been placed; the start of one without a place is `NaN`. */
function tooEarlyFor({ prepared, starts, ends }: Board, job: number): Halt | undefined {
  for (const tie of prepared.outOf[job]!) {
    const earliest = earliestBy(tie, starts[job]!, ends[job]!, prepared.times);
    if (starts[tie.to]! < earliest) return { move: tie.to, to: earliest };
  }
  return undefined;
}
