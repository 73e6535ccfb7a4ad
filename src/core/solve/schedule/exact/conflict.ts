import { earliest, type Network, type Use } from './network.ts';

/** Jobs that together need more of a resource than there is; without any one of them there would be enough. */
export interface Conflict {
  readonly jobs: readonly number[];
  readonly resource: number;
  /** Putting the second after the first delays the end of everything least; absent where all certainly overlap. */
  readonly pair?: readonly [first: number, second: number];
}

/**
 * Where too much is in use when every job starts as early as it may: the conflict that leaves least choice. None: that
 * schedule keeps every rule. All must have to end by some minute.
 *
 * @source Minimal critical sets; Laborie, Complete MCS-based search, IJCAI 2005 (from memory).
 */
export function conflictIn(network: Network): Conflict | undefined {
  let [tightest, least]: [Conflict | undefined, number] = [undefined, Infinity];
  for (const use of network.uses) {
    for (const job of use.jobs) {
      const jobs = tooManyAt(network, use, earliest(network, job));
      if (jobs.length === 0) continue;
      const { pair, choice } = waysOut(network, jobs);
      if (!pair) return { jobs, resource: use.resource };
      if (choice < least) [tightest, least] = [{ jobs, resource: use.resource, pair }, choice];
    }
  }
  return tightest;
}

/** The fewest jobs, greatest needs first, that use too much at a minute; none where there is enough. */
function tooManyAt(network: Network, { jobs, needs, capacity }: Use, minute: number): number[] {
  const found: number[] = [];
  let sum = 0;
  for (const job of jobs) {
    const start = earliest(network, job);
    if (start > minute || start + network.durations[job]! <= minute) continue;
    found.push(job);
    sum += needs[job]!;
    if (sum > capacity) return found;
  }
  return [];
}

/** The order of two jobs that delays the end least; and the choice that all orders leave: 0 for one that just fits, up to 1. */
function waysOut(
  { distances: { at, size }, begin, end, durations }: Network,
  jobs: readonly number[],
): { pair?: [number, number]; choice: number } {
  let [pair, soonest, choice]: [[number, number] | undefined, number, number] = [undefined, Infinity, 0];
  for (const first of jobs) {
    for (const second of jobs) {
      const room = -at[second * size + first]! - durations[first]!;
      if (room < 0) continue;
      choice += room / (1 + room);
      const ends = at[begin * size + first]! + durations[first]! + at[second * size + end]!;
      if (ends <= soonest) [pair, soonest] = [[first, second], ends];
    }
  }
  return { choice, ...(pair && { pair }) };
}
