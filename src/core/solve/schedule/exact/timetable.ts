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
  const certain = certainUse(network, use);
  const highest = Math.max(0, ...certain.heights);
  if (highest > use.capacity) return fullAt(network, use, certain.times[certain.heights.indexOf(highest)]!);
  for (const job of use.jobs) {
    if (highest + use.needs[job]! <= use.capacity) continue;
    const [start, end] = freeWindow(network, use, certain, job);
    if (!distances.settle(begin, job, start)) return fullAt(network, use, start - 1, job);
    if (!distances.settle(job, begin, durations[job]! - end)) return fullAt(network, use, end, job);
  }
  return undefined;
}

/** What is certainly in use: from each time to the next a height. */
interface CertainUse {
  readonly times: readonly number[];
  readonly heights: readonly number[];
}

function certainUse(network: Network, { jobs, needs }: Use): CertainUse {
  const certain = jobs.filter((job) => latest(network, job) < earliestEnd(network, job));
  const times: number[] = [];
  for (const job of certain) times.push(latest(network, job), earliestEnd(network, job));
  times.sort((a, b) => a - b);
  const heights = times.map((time) => {
    let height = 0;
    for (const job of certain) if (isSureAt(network, job, time)) height += needs[job]!;
    return height;
  });
  return { times, heights };
}

function isSureAt(network: Network, job: number, minute: number): boolean {
  return latest(network, job) <= minute && minute < earliestEnd(network, job);
}

/** The earliest start and the latest end of a job that leave others what they certainly use. */
function freeWindow(
  network: Network,
  { capacity, needs }: Use,
  { times, heights }: CertainUse,
  job: number,
): [start: number, end: number] {
  const minutes = network.durations[job]!;
  const [own, ownEnd] = [latest(network, job), earliestEnd(network, job)];
  let [start, end] = [ownEnd - minutes, own + minutes];
  const isFull = (k: number): boolean =>
    heights[k]! > capacity - needs[job]! && (times[k]! < own || times[k]! >= ownEnd);
  for (let k = 0; k < times.length && times[k]! < start + minutes; k++)
    if (times[k + 1]! > start && isFull(k)) start = times[k + 1]!;
  for (let k = times.length - 1; k > 0 && times[k]! > end - minutes; k--)
    if (times[k - 1]! < end && isFull(k - 1)) end = times[k - 1]!;
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
