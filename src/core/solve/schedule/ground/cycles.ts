import { emptyBoard, type Board } from './board.ts';
import type { Basis } from './ground.ts';
import { lastsUntil, type Way } from './ways-through.ts';

/** More than so many looks at a hold are not worth a bound. */
const mostLooks = 200_000;

/**
 * The earliest end of the last hold of a resource, when each can begin only where another has ended: with 4 moulds and
 * 24 models that chill overnight, some mould is filled 6 times, and no filling lasts less than to the next morning.
 *
 *     4 moulds   |--- chill ---|--- chill ---|--- chill --- ...      24 holds: at least 6 in one row
 *
 * @returns `-Infinity` where the resource is not held, or by too many.
 */
export function endOfCycles(ground: Basis, resource: number): number {
  const { holds } = ground.prepared;
  const lasts = (hold: number): boolean => ground.ways[hold]!.some(({ minutes }) => minutes > 0);
  const held = holds.flatMap(({ usage }, hold) => (usage === resource && lasts(hold) ? [hold] : []));
  if (held.length === 0) return -Infinity;
  const least = Math.min(...held.map((hold) => holds[hold]!.count));
  const rounds = Math.ceil(held.length / Math.floor(ground.problem.capacities[resource]! / least));
  if (rounds * held.length > mostLooks) return -Infinity;
  const board = emptyBoard(ground);
  let end = ground.prepared.from;
  for (let round = 0; round < rounds; round++) {
    end = Math.min(...held.map((hold) => endFrom(ground.ways[hold]!, end, board)));
  }
  return end;
}

/** The earliest end of a hold of which no moment comes before a minute. */
function endFrom(ways: readonly Way[], minute: number, board: Board): number {
  return Math.max(...ways.map((way) => wayEndFrom(way, minute, board)));
}

function wayEndFrom(way: Way, minute: number, board: Board): number {
  const [job, edge] = way.opener;
  const times = board.prepared.times[job]!;
  const wanted = edge === 'end' ? times.startFor(minute) : minute;
  const start = times.start(Math.max(board.ground.earliest[job]!, wanted));
  const end = start === Infinity ? Infinity : times.end(start);
  if (end === Infinity) return Infinity;
  board.starts[job] = start;
  board.ends[job] = end;
  const until = lastsUntil(way, board);
  board.starts[job] = board.ends[job] = NaN;
  return until;
}
