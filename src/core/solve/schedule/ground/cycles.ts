import { emptyBoard, type Board } from './board.ts';
import type { Basis } from './ground.ts';
import { isEnd, jobAt } from './moments.ts';
import { lastsUntil, type Way } from './ways-through.ts';

/** More than so many looks at a hold are not worth a bound. */
const mostLooks = 200_000;

/** Holds of a resource that begin at the same moment, whatever happens. */
interface Bundle {
  count: number;
  /** For each hold the ways from its beginning to its end. */
  readonly holds: (readonly Way[])[];
}

/**
 * The earliest end of the last hold of a resource, when each can begin only where another has ended: with 4 moulds and
 * 24 models that chill overnight, some mould is filled 6 times, and no filling lasts less than to the next morning.
 *
 *     4 moulds   |--- chill ---|--- chill ---|--- chill --- ...      24 holds: at least 6 in one row
 *
 * What begins together is one bundle: of 6 moulds that are filled by fours, only one four is full at a time. A bundle
 * keeps others out until the first of its holds ends.
 *
 * @returns `-Infinity` where the resource is not held, or by too many.
 */
export function endOfCycles(ground: Basis, resource: number): number {
  const bundles = bundlesOf(ground, resource);
  const capacity = ground.problem.capacities[resource]!;
  const counts = [...new Set(bundles.map(({ count }) => count))];
  const board = emptyBoard(ground);
  let end = -Infinity;
  for (const least of counts) {
    const large = bundles.filter(({ count }) => count >= least);
    const held = large.reduce((sum, { count }) => sum + count, 0);
    const rounds = Math.ceil(Math.max(large.length / Math.floor(capacity / least), held / capacity));
    if (rounds * large.length <= mostLooks) end = Math.max(end, endOfRounds(large, rounds, board));
  }
  return end;
}

function bundlesOf({ prepared, ways }: Basis, resource: number): Bundle[] {
  const byBeginning = new Map<string, Bundle>();
  prepared.holds.forEach(({ usage, count, from }, hold) => {
    if (usage !== resource || !ways[hold]!.some(({ minutes }) => minutes > 0)) return;
    const beginning = from.toSorted((a, b) => a - b).join();
    const bundle = byBeginning.get(beginning) ?? { count: 0, holds: [] };
    bundle.count += count;
    bundle.holds.push(ways[hold]!);
    byBeginning.set(beginning, bundle);
  });
  return [...byBeginning.values()];
}

/** The end of the last of so many bundles in a row, each begun when the first hold of the one before has ended. */
function endOfRounds(bundles: readonly Bundle[], rounds: number, board: Board): number {
  let begin = board.prepared.from;
  for (let round = 1; round < rounds; round++) begin = least(bundles, begin, board, Math.min);
  return least(bundles, begin, board, Math.max);
}

/** The least end of a bundle that begins no earlier than a minute: of its first hold, or of its last. */
function least(
  bundles: readonly Bundle[],
  minute: number,
  board: Board,
  which: (...ends: number[]) => number,
): number {
  let earliest = Infinity;
  for (const { holds } of bundles) {
    earliest = Math.min(earliest, which(...holds.map((ways) => endFrom(ways, minute, board))));
  }
  return earliest;
}

/** The earliest end of a hold of which no moment comes before a minute. */
function endFrom(ways: readonly Way[], minute: number, board: Board): number {
  return Math.max(...ways.map((way) => wayEndFrom(way, minute, board)));
}

function wayEndFrom(way: Way, minute: number, board: Board): number {
  const jobs = board.starts.length;
  const job = jobAt(way.opener, jobs);
  const times = board.prepared.times[job]!;
  const wanted = isEnd(way.opener, jobs) ? times.startFor(minute) : minute;
  const start = times.start(Math.max(board.ground.earliest[job]!, wanted));
  const end = start === Infinity ? Infinity : times.end(start);
  if (end === Infinity) return Infinity;
  board.starts[job] = start;
  board.ends[job] = end;
  const until = lastsUntil(way, board);
  board.starts[job] = board.ends[job] = NaN;
  return until;
}
