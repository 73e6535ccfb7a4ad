import type { Obstacle } from '../problem.ts';
import { earliest, latest, type Network, type Use } from './network.ts';

/**
 * Moves the jobs that use a resource out of the stretches in which others certainly take up what they need.
 *
 *     earliest   |------job------|
 *     latest           |------job------|
 *     certain          [=========)
 *
 * @returns What proves that there is no schedule, if anything does.
 * @source Timetable constraint; Baptiste, Le Pape and Nuijten, Constraint-Based Scheduling, 2001 (from memory).
 */
export function timetable(network: Network, use: Use): Obstacle | undefined {
  const { distances, begin, durations } = network;
  const stretches = certainUse(network, use);
  const highest = stretches.reduce((most, { height }) => Math.max(most, height), 0);
  if (highest > use.capacity)
    return fullAt(network, use, stretches.find(({ height }) => height === highest)!.from);
  for (const job of use.jobs) {
    if (highest + use.needs[job]! <= use.capacity) continue;
    const [start, end] = freeWindow(network, use, stretches, job);
    if (!distances.settle(begin, job, start)) return fullAt(network, use, start - 1, job);
    distances.settle(job, begin, durations[job]! - end);
  }
  return undefined;
}

/** So much is certainly in use. */
interface Stretch {
  readonly from: number;
  readonly until: number;
  readonly height: number;
}

/** One after the other, from the first time to the last at which anything is certainly in use. */
function certainUse(network: Network, { jobs, needs }: Use): Stretch[] {
  const certain = jobs.filter((job) => latest(network, job) < earliestEnd(network, job));
  const times = certain.flatMap((job) => [latest(network, job), earliestEnd(network, job)]);
  times.sort((a, b) => a - b);
  return times.slice(1).map((until, before) => {
    const from = times[before]!;
    let height = 0;
    for (const job of certain) if (isSureAt(network, job, from)) height += needs[job]!;
    return { from, until, height };
  });
}

function isSureAt(network: Network, job: number, minute: number): boolean {
  return latest(network, job) <= minute && minute < earliestEnd(network, job);
}

/**
 * The earliest start and the latest end of a job that leave others what they certainly use. Where it can start so early,
 * it can end so late.
 */
function freeWindow(
  network: Network,
  { capacity, needs }: Use,
  stretches: readonly Stretch[],
  job: number,
): [start: number, end: number] {
  const minutes = network.durations[job]!;
  const [own, ownEnd] = [latest(network, job), earliestEnd(network, job)];
  const room = capacity - needs[job]!;
  const full = stretches.filter(({ from, height }) => height > room && (from < own || from >= ownEnd));
  let [start, end] = [ownEnd - minutes, own + minutes];
  for (const { from, until } of full) if (until > start && from < start + minutes) start = until;
  for (const { from, until } of full.toReversed()) if (from < end && until > end - minutes) end = from;
  return [start, end];
}

/** The jobs that are certainly there at a minute, and the one that finds no room. */
function fullAt(network: Network, { jobs, resource }: Use, minute: number, job?: number): Obstacle {
  const there = jobs.filter((other) => other === job || isSureAt(network, other, minute));
  return { because: 'capacity', jobs: there, resource };
}

function earliestEnd(network: Network, job: number): number {
  return earliest(network, job) + network.durations[job]!;
}
