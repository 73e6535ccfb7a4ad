import { earliestBeside, type Board } from './board.ts';
import { distancesFrom } from './longest-paths.ts';
import { isEnd, jobAt } from './moments.ts';
import type { Prepared } from './prepared.ts';

/** How the beginning of a hold pushes its end: a mould held from pour over chill to unmould. */
export interface Way {
  /** Moments by number. */
  readonly opener: number;
  /** Jobs between, each after those that push it, without the opener; empty where there are too many to follow. */
  readonly jobs: readonly number[];
  readonly to: readonly number[];
  /** The least time from the opener to the end of the hold, by lags alone; below zero where they do not say. */
  readonly minutes: number;
}

/** Longer ways are not followed job by job. */
const mostJobs = 12;

/** For each hold and each of its `from` moments the way to its end. */
export function waysThrough(prepared: Prepared): Way[][] {
  return prepared.holds.map(({ from, to }) => from.map((opener) => wayFrom(opener, to, prepared)));
}

function wayFrom(opener: number, to: readonly number[], prepared: Prepared): Way {
  const { durations, times } = prepared;
  const jobs = durations.length;
  const job = jobAt(opener, jobs);
  const distances = distancesFrom(job, prepared.outOf);
  const alreadyGone = isEnd(opener, jobs) ? times[job]!.longest : 0;
  const lasts = to.map((moment) => {
    const last = jobAt(moment, jobs);
    const toStart = distances.get(last) ?? -Infinity;
    return toStart + (isEnd(moment, jobs) ? durations[last]! : 0) - alreadyGone;
  });
  const minutes = Math.max(...lasts.map((length) => (Number.isNaN(length) ? -Infinity : length)));
  return { opener, jobs: jobsBetween(job, to, prepared), to, minutes };
}

function jobsBetween(opener: number, to: readonly number[], { into, outOf, blockOf }: Prepared): number[] {
  const pushed = distancesFrom(opener, outOf, 0);
  const last = to.map((moment) => jobAt(moment, blockOf.length));
  const found = new Set(last.filter((job) => pushed.has(job)));
  for (const job of found) {
    if (found.size > mostJobs) return [];
    for (const { from, least } of into[job]!) if (least >= 0 && pushed.has(from)) found.add(from);
  }
  found.delete(opener);
  return [...found].sort((a, b) => blockOf[a]! - blockOf[b]! || pushed.get(a)! - pushed.get(b)! || a - b);
}

/**
 * The earliest minute until which a hold lasts that begins where its opener now stands, by lags and calendars, beside
 * nobody else. Jobs between stand on the board while this is worked out, and no longer; one for which there is no time
 * says nothing.
 */
export function lastsUntil({ jobs, opener, to, minutes }: Way, board: Board): number {
  const { starts, ends, moments, ground } = board;
  const { times } = ground.prepared;
  let onTrial = 0; // a bit for each job between
  for (let at = 0; at < jobs.length; at++) {
    const job = jobs[at]!;
    if (!Number.isNaN(starts[job]!)) continue;
    const start = times[job]!.start(earliestBeside(board, job, ground.earliest[job]!));
    const end = start === Infinity ? Infinity : times[job]!.end(start);
    if (end === Infinity) continue;
    onTrial |= 1 << at;
    starts[job] = start;
    ends[job] = end;
  }
  let until = moments[opener]! + minutes;
  for (const moment of to) {
    const minute = moments[moment]!;
    if (minute > until) until = minute;
  }
  for (let at = 0; at < jobs.length; at++) if (onTrial & (1 << at)) starts[jobs[at]!] = ends[jobs[at]!] = NaN;
  return until;
}
