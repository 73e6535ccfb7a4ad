import { findExtent, keep, letGo, reserve, use, type Board, type Extent } from '../ground/board.ts';
import { isEnd, jobAt } from '../ground/moments.ts';
import { busyUntil, usedForGood } from '../ground/usage.ts';
import { lastsUntil } from '../ground/ways-through.ts';

/** Why a job has no place. */
export type Halt =
  /** While so much of this usage is held without a known end (or by the job itself). */
  | { readonly waitsFor: number }
  /** Unless another job comes no earlier than a minute (from which it starts): its hold cannot stretch so far. */
  | { readonly move: number; readonly to: number }
  /** Its calendar comes to an end. */
  | { readonly never: true };

/*
 * This is where all the time goes: nothing in this file makes an object unless a job finds no place. What stands in
 * the way of a job on trial is left in the `clash` of the board.
 */

/**
 * Puts a job on the board, in its earliest place, not before a minute, beside all that is there. Lags are the caller's
 * matter.
 *
 * @returns Why there is no place; the board is as before then.
 */
export function findPlace(board: Board, job: number, from: number): Halt | undefined {
  const touched = board.prepared.holdsOf[job]!;
  for (const hold of touched) letGo(board, hold);
  const halt = tryInTurn(board, job, from);
  if (!halt) return undefined;
  board.starts[job] = board.ends[job] = NaN;
  for (const hold of touched) keep(board, hold);
  return halt;
}

function tryInTurn(board: Board, job: number, from: number): Halt | undefined {
  const { starts, ends, prepared } = board;
  const times = prepared.times[job]!;
  let earliest = from;
  for (let tries = 0; tries < fewTries || tries < mostTries(board); tries++) {
    const start = times.start(earliest);
    const end = start === Infinity ? Infinity : times.end(start);
    if (end === Infinity) return { never: true };
    starts[job] = start;
    ends[job] = end;
    if (!isInTheWay(board, job)) return undefined;
    const { usage, busy, opener } = board.clash;
    if (busy === Infinity) return { waitsFor: usage };
    const opens = opener < 0 ? job : jobAt(opener, starts.length);
    const isMove = opener >= 0 && isEnd(opener, starts.length);
    const next = isMove ? prepared.times[opens]!.startFor(busy) : busy;
    if (opens !== job) return { move: opens, to: next };
    earliest = next;
  }
  return { waitsFor: board.clash.usage };
}

/** Each try goes past a change of some usage; more tries than there are changes mean that a job is in its own way. */
function mostTries({ usages }: Board): number {
  return usages.reduce((sum, { count }) => sum + count, fewTries);
}
const fewTries = 10;

/** Whether something stands in the way of a job on trial; else it is laid down with all that it uses and holds. */
function isInTheWay(board: Board, job: number): boolean {
  if (isInWayOfJob(board, job)) return true;
  use(board, job, 1);
  const touched = board.prepared.holdsOf[job]!;
  for (let at = 0; at < touched.length; at++) {
    const hold = touched[at]!;
    if (!findExtent(board, hold)) continue;
    if (isInWayOfHold(board, hold)) {
      for (let laid = 0; laid < at; laid++) letGo(board, touched[laid]!);
      use(board, job, -1);
      return true;
    }
    reserve(board, hold);
  }
  return false;
}

function isInWayOfJob(board: Board, job: number): boolean {
  const { prepared, usages, starts, ends } = board;
  const start = starts[job]!;
  const end = ends[job]!;
  for (const { usage, room } of prepared.needs[job]!) {
    const busy = busyUntil(usages[usage]!, start, end, room);
    if (busy > -Infinity) return isClash(board, usage, busy, -1);
  }
  for (const { theirs, before, after } of prepared.apart[job]!) {
    const busy = busyUntil(usages[theirs]!, start - before, end + after, 0);
    if (busy > -Infinity) return isClash(board, theirs, busy + before, -1);
  }
  return false;
}

/** The same for a hold of which the extent has just been found. */
function isInWayOfHold(board: Board, hold: number): boolean {
  const { usage, room, from } = board.prepared.holds[hold]!;
  const { extent } = board;
  const inUse = board.usages[usage]!;
  const opener = from[extent.opener]!;
  if (!extent.isWhole && usedForGood(inUse) > room) return isClash(board, usage, Infinity, opener);
  let busy = busyUntil(inUse, extent.from, extent.isWhole ? extent.until : Infinity, room);
  if (busy > -Infinity && !extent.isWhole) {
    busy = busyUntil(inUse, extent.from, openEnd(board, hold, extent), room);
  }
  return busy > -Infinity && isClash(board, usage, busy, opener);
}

/** The least minute to which a hold without a known end will stretch. */
function openEnd(board: Board, hold: number, { opener, until }: Extent): number {
  return Math.max(until, lastsUntil(board.ground.ways[hold]![opener]!, board));
}

function isClash({ clash }: Board, usage: number, busy: number, opener: number): true {
  clash.usage = usage;
  clash.busy = busy;
  clash.opener = opener;
  return true;
}
