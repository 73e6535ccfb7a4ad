import type { Basis } from './ground.ts';
import type { Times } from '../mirrored.ts';
import type { Prepared } from './prepared.ts';
import { earliestBy } from './ties.ts';
import { clear, copyUsage, nothingUsed, occupy, type Usage } from './usage.ts';

/** A schedule in the making: which jobs have a place, and what they use and hold. It is used again and again. */
export interface Board {
  readonly ground: Basis;
  readonly prepared: Prepared;
  /** By number (see `moments.ts`); `NaN` while a job has no place. */
  readonly moments: Float64Array;
  /** The two halves of `moments`. */
  readonly starts: Float64Array;
  readonly ends: Float64Array;
  /** Resources, then two sides of each exclusion. */
  readonly usages: readonly Usage[];
  /** From when until when each hold reserves; until `Infinity` while any of its jobs has no place. `NaN`: nothing. */
  readonly heldFrom: Float64Array;
  readonly heldUntil: Float64Array;
  /** What `extent` has found last. */
  readonly extent: Extent;
  /** What stood in the way of a job last: a usage with no room until a minute; of a hold, its opener, else -1. */
  readonly clash: Clash;
}

export interface Clash {
  usage: number;
  busy: number;
  opener: number;
}

/** A hold as far as its jobs have a place. */
export interface Extent {
  /** The earliest moment, and which of the hold's `from` it is. */
  from: number;
  opener: number;
  /** The latest known moment of `to`. */
  until: number;
  /** Whether all its jobs have a place. */
  isWhole: boolean;
}

export function emptyBoard(ground: Basis): Board {
  const { prepared } = ground;
  const jobs = prepared.durations.length;
  const moments = new Float64Array(2 * jobs).fill(NaN);
  return {
    ground,
    prepared,
    moments,
    starts: moments.subarray(0, jobs),
    ends: moments.subarray(jobs),
    usages: Array.from({ length: prepared.usages }, nothingUsed),
    heldFrom: new Float64Array(prepared.holds.length).fill(NaN),
    heldUntil: new Float64Array(prepared.holds.length).fill(NaN),
    extent: { from: 0, opener: -1, until: 0, isWhole: false },
    clash: { usage: -1, busy: 0, opener: -1 },
  };
}

/** Takes everything off. */
export function clearBoard({ moments, usages, heldFrom, heldUntil }: Board): void {
  moments.fill(NaN);
  usages.forEach(clear);
  heldFrom.fill(NaN);
  heldUntil.fill(NaN);
}

/** Makes one board like another of the same ground. */
export function copyBoard(from: Board, to: Board): void {
  to.moments.set(from.moments);
  to.heldFrom.set(from.heldFrom);
  to.heldUntil.set(from.heldUntil);
  from.usages.forEach((usage, index) => copyUsage(usage, to.usages[index]!));
}

/** A copy of the times of all jobs. */
export function timesOn({ starts, ends }: Board): Times {
  return { starts: Array.from(starts), ends: Array.from(ends) };
}

export function isPlaced({ starts }: Board, job: number): boolean {
  return !Number.isNaN(starts[job]!);
}

/** The earliest start, not before `lower`, that the lags from jobs with a place allow. */
export function earliestBeside({ prepared, starts, ends }: Board, job: number, lower: number): number {
  let earliest = lower;
  for (const tie of prepared.into[job]!) {
    const start = starts[tie.from]!;
    if (Number.isNaN(start)) continue;
    const minute = earliestBy(tie, start, ends[tie.from]!, prepared.times);
    if (minute > earliest) earliest = minute;
  }
  return earliest;
}

/** Gives a job a place, with all that it uses and holds. */
export function put(board: Board, job: number, start: number): void {
  board.starts[job] = start;
  board.ends[job] = board.prepared.times[job]!.end(start);
  use(board, job, 1);
  holdAnew(board, job);
}

/** Takes a job off the board again. */
export function takeOff(board: Board, job: number): void {
  use(board, job, -1);
  board.starts[job] = board.ends[job] = NaN;
  holdAnew(board, job);
}

function holdAnew(board: Board, job: number): void {
  for (const hold of board.prepared.holdsOf[job]!) {
    letGo(board, hold);
    keep(board, hold);
  }
}

/** Lays down what a job in its place uses itself, or gives it back. */
export function use({ prepared, usages, starts, ends }: Board, job: number, times: 1 | -1): void {
  const start = starts[job]!;
  const end = ends[job]!;
  for (const { usage, count } of prepared.needs[job]!) occupy(usages[usage]!, start, end, times * count);
  for (const { mine, before, after } of prepared.apart[job]!)
    occupy(usages[mine]!, start - before, end + after, times);
}

/** Reserves what a hold is known to keep: up to its end, or for good while that is open. */
export function keep(board: Board, hold: number): void {
  if (findExtent(board, hold)) reserve(board, hold);
}

/** The same where `extent` is that of the hold. */
export function reserve(board: Board, hold: number): void {
  const { usage, count } = board.prepared.holds[hold]!;
  const { from, until, isWhole } = board.extent;
  const end = isWhole ? until : Infinity;
  occupy(board.usages[usage]!, from, end, count);
  board.heldFrom[hold] = from;
  board.heldUntil[hold] = end;
}

/** Gives back what a hold has reserved. */
export function letGo(board: Board, hold: number): void {
  const from = board.heldFrom[hold]!;
  if (Number.isNaN(from)) return;
  const { usage, count } = board.prepared.holds[hold]!;
  occupy(board.usages[usage]!, from, board.heldUntil[hold]!, -count);
  board.heldFrom[hold] = board.heldUntil[hold] = NaN;
}

/** Works out into `extent` how far a hold is known; whether any of its `from` is. */
export function findExtent({ prepared, moments, extent }: Board, hold: number): boolean {
  const { from, to } = prepared.holds[hold]!;
  extent.opener = -1;
  extent.from = Infinity;
  extent.until = -Infinity;
  extent.isWhole = true;
  for (let index = 0; index < from.length; index++) {
    const minute = moments[from[index]!]!;
    if (Number.isNaN(minute)) extent.isWhole = false;
    else if (minute < extent.from) {
      extent.from = minute;
      extent.opener = index;
    }
  }
  if (extent.opener < 0) return false;
  for (const moment of to) {
    const minute = moments[moment]!;
    if (Number.isNaN(minute)) extent.isWhole = false;
    else if (minute > extent.until) extent.until = minute;
  }
  return true;
}
