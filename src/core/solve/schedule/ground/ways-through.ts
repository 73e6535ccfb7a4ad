import { earliestBeside, type Board } from './board.ts';
import { distancesFrom } from './longest-paths.ts';
import type { Prepared } from './prepared.ts';
import type { Moment } from '../problem.ts';

/** How the beginning of a hold pushes its end: a mould held from pour over chill to unmould. */
export interface Way {
  readonly opener: Moment;
  /** Jobs between, each after those that push it, without the opener; empty where there are too many to follow. */
  readonly jobs: readonly number[];
  readonly to: readonly Moment[];
  /** The least time from the opener to the end of the hold, by lags alone; below zero where they do not say. */
  readonly minutes: number;
}

/** Longer ways are not followed job by job. */
const mostJobs = 12;

/** For each hold and each of its `from` moments the way to its end. */
export function waysThrough(prepared: Prepared): Way[][] {
  return prepared.holds.map(({ from, to }) => from.map((opener) => wayFrom(opener, to, prepared)));
}

function wayFrom(opener: Moment, to: readonly Moment[], prepared: Prepared): Way {
  const { durations, times } = prepared;
  const [job, edge] = opener;
  const distances = distancesFrom(job, prepared.outOf);
  const alreadyGone = edge === 'end' ? times[job]!.longest : 0;
  const lasts = to.map(([last, lastEdge]) => {
    const toStart = distances.get(last) ?? -Infinity;
    return toStart + (lastEdge === 'end' ? durations[last]! : 0) - alreadyGone;
  });
  const minutes = Math.max(...lasts.map((length) => (Number.isNaN(length) ? -Infinity : length)));
  return { opener, jobs: jobsBetween(job, to, prepared), to, minutes };
}

function jobsBetween(opener: number, to: readonly Moment[], { into, outOf, blockOf }: Prepared): number[] {
  const pushed = distancesFrom(opener, outOf, 0);
  const found = new Set(to.map(([job]) => job).filter((job) => pushed.has(job)));
  for (const job of found) {
    if (found.size > mostJobs) return [];
    for (const { from, least } of into[job]!) if (least >= 0 && pushed.has(from)) found.add(from);
  }
  found.delete(opener);
  return [...found].sort((a, b) => blockOf[a]! - blockOf[b]! || pushed.get(a)! - pushed.get(b)! || a - b);
}

/**
 * The earliest minute until which a hold lasts that begins where its opener now stands, by lags and calendars, beside
 * nobody else. Jobs between stand on the board while this is worked out, and no longer.
 */
export function lastsUntil({ jobs, opener: [opener, edge], to, minutes }: Way, board: Board): number {
  const { starts, ends, ground } = board;
  const onTrial = jobs.filter((job) => Number.isNaN(starts[job]));
  for (const job of onTrial) {
    const { times } = ground.prepared;
    starts[job] = times[job]!.start(earliestBeside(board, job, ground.earliest[job]!));
    ends[job] = starts[job] === Infinity ? Infinity : times[job]!.end(starts[job]!);
  }
  let until = (edge === 'start' ? starts : ends)[opener]! + minutes;
  for (const [job, at] of to) {
    const moment = (at === 'start' ? starts : ends)[job]!;
    if (moment > until && moment < Infinity) until = moment;
  }
  for (const job of onTrial) starts[job] = ends[job] = NaN;
  return until;
}
