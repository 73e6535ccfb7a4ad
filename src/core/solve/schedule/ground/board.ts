import type { Basis } from './ground.ts';
import type { Prepared } from './prepared.ts';
import type { Moment } from '../problem.ts';
import { earliestBy } from './ties.ts';
import { nothingUsed, occupy, type Usage } from './usage.ts';

/** A schedule in the making: which jobs have a place, and what they use and hold. */
export interface Board {
  readonly ground: Basis;
  readonly prepared: Prepared;
  /** `NaN` while a job has no place. */
  readonly starts: number[];
  readonly ends: number[];
  /** Resources, then two sides of each exclusion. */
  readonly usages: readonly Usage[];
  /** What each hold reserves; until `Infinity` while any of its jobs has no place. */
  readonly held: (Reserved | undefined)[];
}

export interface Reserved {
  readonly from: number;
  readonly until: number;
}

/** A hold as far as its jobs have a place. */
export interface Extent {
  /** The earliest moment, and which of the hold's `from` it is. */
  readonly from: number;
  readonly opener: number;
  /** The latest known moment of `to`. */
  readonly until: number;
  /** Whether all its jobs have a place. */
  readonly isWhole: boolean;
}

export function emptyBoard(ground: Board['ground']): Board {
  const { prepared } = ground;
  return {
    ground,
    prepared,
    starts: prepared.durations.map(() => NaN),
    ends: prepared.durations.map(() => NaN),
    usages: Array.from({ length: prepared.usages }, nothingUsed),
    held: prepared.holds.map(() => undefined),
  };
}

export function isPlaced(board: Board, job: number): boolean {
  return !Number.isNaN(board.starts[job]);
}

/** The earliest start, not before `lower`, that the lags from jobs with a place allow. */
export function earliestBeside({ prepared, starts, ends }: Board, job: number, lower: number): number {
  let earliest = lower;
  for (const tie of prepared.into[job]!) {
    const start = starts[tie.from]!;
    if (Number.isNaN(start)) continue;
    earliest = Math.max(earliest, earliestBy(tie, start, ends[tie.from]!, prepared.times));
  }
  return earliest;
}

/** Gives a job a place, with all that it uses and holds. */
export function put(board: Board, job: number, start: number): void {
  board.starts[job] = start;
  board.ends[job] = board.prepared.times[job]!.end(start);
  use(board, job, 1);
  for (const hold of board.prepared.holdsOf[job]!) {
    letGo(board, hold);
    keep(board, hold);
  }
}

/** Takes a job off the board again. */
export function takeOff(board: Board, job: number): void {
  use(board, job, -1);
  board.starts[job] = board.ends[job] = NaN;
  for (const hold of board.prepared.holdsOf[job]!) {
    letGo(board, hold);
    keep(board, hold);
  }
}

function use({ prepared, usages, starts, ends }: Board, job: number, times: 1 | -1): void {
  const [start, end] = [starts[job]!, ends[job]!];
  for (const { usage, count } of prepared.needs[job]!) occupy(usages[usage]!, start, end, times * count);
  for (const { mine, before, after } of prepared.apart[job]!)
    occupy(usages[mine]!, start - before, end + after, times);
}

/** Reserves what a hold is known to keep: up to its end, or for good while that is open. */
export function keep(board: Board, hold: number): void {
  const { usage, count } = board.prepared.holds[hold]!;
  const known = extent(board, hold);
  if (!known) return;
  const until = known.isWhole ? known.until : Infinity;
  occupy(board.usages[usage]!, known.from, until, count);
  board.held[hold] = { from: known.from, until };
}

/** Gives back what a hold has reserved. */
export function letGo(board: Board, hold: number): void {
  const { usage, count } = board.prepared.holds[hold]!;
  const now = board.held[hold];
  if (now) occupy(board.usages[usage]!, now.from, now.until, -count);
  board.held[hold] = undefined;
}

/** How far a hold is known; `undefined` while none of its `from` is. */
export function extent(board: Board, hold: number): Extent | undefined {
  const { from, to } = board.prepared.holds[hold]!;
  let [opener, earliest, latest, unknown] = [-1, Infinity, -Infinity, 0];
  from.forEach((moment, index) => {
    const minute = minuteOf(board, moment);
    if (Number.isNaN(minute)) unknown++;
    if (minute < earliest) [opener, earliest] = [index, minute];
  });
  for (const moment of to) {
    const minute = minuteOf(board, moment);
    if (Number.isNaN(minute)) unknown++;
    else latest = Math.max(latest, minute);
  }
  return opener < 0 ? undefined : { from: earliest, opener, until: latest, isWhole: unknown === 0 };
}

function minuteOf({ starts, ends }: Board, [job, edge]: Moment): number {
  return edge === 'start' ? starts[job]! : ends[job]!;
}
