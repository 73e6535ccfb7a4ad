import { extent, keep, letGo, type Board, type Extent } from '../ground/board.ts';
import type { Moment } from '../problem.ts';
import { busyUntil, occupy, usedForGood } from '../ground/usage.ts';
import { lastsUntil } from '../ground/ways-through.ts';

/** The answer to "where can this job go?". */
export type Place =
  | { readonly start: number }
  /** Nowhere, while so much of this usage is held without a known end (or by the job itself). */
  | { readonly waitsFor: number }
  /** Nowhere, unless a moment of another job comes no earlier than a minute: its hold cannot stretch so far. */
  | { readonly move: Moment; readonly to: number }
  /** Nowhere: its calendar comes to an end. */
  | { readonly never: true };

/** A usage in which a job on trial finds no room until a minute; of a hold, the moment at which that begins. */
interface Clash {
  readonly usage: number;
  readonly busy: number;
  readonly opener?: Moment;
}

/** Each try goes past a change of some usage; more tries than there are changes mean that a job is in its own way. */
function mostTries({ usages }: Board): number {
  return usages.reduce((sum, { times }) => sum + times.length, 10);
}

/** The earliest place for a job, not before a minute, beside all that is on the board. Lags are the caller's matter. */
export function findPlace(board: Board, job: number, from: number): Place {
  const touched = board.prepared.holdsOf[job]!;
  for (const hold of touched) letGo(board, hold);
  const place = tryInTurn(board, job, from);
  board.starts[job] = board.ends[job] = NaN;
  for (const hold of touched) keep(board, hold);
  return place;
}

function tryInTurn(board: Board, job: number, from: number): Place {
  const times = board.prepared.times[job]!;
  let [earliest, full] = [from, -1];
  for (let tries = mostTries(board); tries > 0; tries--) {
    const start = times.start(earliest);
    const end = start === Infinity ? Infinity : times.end(start);
    if (end === Infinity) return { never: true };
    board.starts[job] = start;
    board.ends[job] = end;
    const clash = clashOfJob(board, job) ?? clashOfHolds(board, job);
    if (!clash) return { start };
    const { usage, busy, opener } = clash;
    if (busy === Infinity) return { waitsFor: usage };
    if (opener && opener[0] !== job) return { move: opener, to: busy };
    earliest = opener?.[1] === 'end' ? times.startFor(busy) : busy;
    full = usage;
  }
  return { waitsFor: full };
}

/** What stands in the way of a job on trial itself. */
function clashOfJob({ prepared, usages, starts, ends }: Board, job: number): Clash | undefined {
  const [start, end] = [starts[job]!, ends[job]!];
  for (const { usage, room } of prepared.needs[job]!) {
    const busy = busyUntil(usages[usage]!, start, end, room);
    if (busy > -Infinity) return { usage, busy };
  }
  for (const { theirs, before, after } of prepared.apart[job]!) {
    const busy = busyUntil(usages[theirs]!, start - before, end + after, 0);
    if (busy > -Infinity) return { usage: theirs, busy: busy + before };
  }
  return undefined;
}

/** What stands in the way of the holds that a job on trial begins, stretches or ends. */
function clashOfHolds(board: Board, job: number): Clash | undefined {
  const { holdsOf, shares } = board.prepared;
  if (shares[job]) return clashTogether(board, job);
  for (const hold of holdsOf[job]!) {
    const clash = clashOfHold(board, hold);
    if (clash) return clash;
  }
  return undefined;
}

/** The same where a job needs more than once of one resource: what has been judged is laid down for the next. */
function clashTogether(board: Board, job: number): Clash | undefined {
  const laid: Laid[] = [];
  const lay: Lay = (usage, from, until, count) => {
    occupy(board.usages[usage]!, from, until, count);
    laid.push([usage, from, until, count]);
  };
  const { needs, holdsOf } = board.prepared;
  for (const { usage, count } of needs[job]!) lay(usage, board.starts[job]!, board.ends[job]!, count);
  let clash: Clash | undefined;
  for (const hold of holdsOf[job]!) clash ??= clashOfHold(board, hold, lay);
  for (const [usage, from, until, count] of laid) occupy(board.usages[usage]!, from, until, -count);
  return clash;
}

type Laid = [usage: number, from: number, until: number, count: number];
type Lay = (...laid: Laid) => void;

function clashOfHold(board: Board, hold: number, lay?: Lay): Clash | undefined {
  const known = extent(board, hold);
  if (!known) return undefined;
  const { usage, room, count, from } = board.prepared.holds[hold]!;
  const opener = from[known.opener]!;
  const inUse = board.usages[usage]!;
  if (!known.isWhole && usedForGood(inUse) > room) return { usage, busy: Infinity, opener };
  const busy = busyUntil(inUse, known.from, known.isWhole ? known.until : openEnd(board, hold, known), room);
  if (busy > -Infinity) return { usage, busy, opener };
  lay?.(usage, known.from, known.isWhole ? known.until : Infinity, count);
  return undefined;
}

/** The least minute to which a hold without a known end will stretch. */
function openEnd(board: Board, hold: number, { opener, until }: Extent): number {
  return Math.max(until, lastsUntil(board.ground.ways[hold]![opener]!, board));
}
