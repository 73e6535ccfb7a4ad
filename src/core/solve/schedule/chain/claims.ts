import type { Times } from '../mirrored.ts';
import type { Edge, Exclusion, Hold, Moment, ScheduleProblem } from '../problem.ts';

/** What a job, or a hold that ends with it, has until a minute. */
export interface Kept {
  readonly job: number;
  readonly from: number;
  readonly until: number;
  readonly count: number;
}

/** All that is had of one resource, or by one side of an exclusion, by when it is over. */
export interface Ledger {
  readonly byEnd: readonly Kept[];
  /** How much is in use just before a minute. */
  readonly usedBefore: (minute: number) => number;
}

/** What a job needs from an edge on, `lead` minutes ahead: that of a ledger no more than `room` is in use. */
export interface Claim {
  readonly kind: 'resource' | 'exclusion';
  readonly ledger: Ledger;
  readonly room: number;
  readonly edge: Edge;
  readonly lead: number;
  readonly resource?: number;
}

/** What each job of a schedule claims of resources, for itself and for the holds that it opens, and of exclusions. */
export function claims(problem: ScheduleProblem, times: Times): readonly (readonly Claim[])[] {
  const { durations, capacities, exclusions = [] } = problem;
  const found = durations.map((): Claim[] => []);
  capacities.forEach((capacity, resource) => {
    const kept = keptOf(problem, times, resource);
    const ledger = ledgerOf(kept.map(({ ends }) => ends));
    for (const [opener, count] of countsByOpener(kept)) {
      const [job, edge] = momentOf(opener);
      found[job]!.push({ kind: 'resource', ledger, room: capacity - count, edge, lead: 0, resource });
    }
  });
  for (const { one, other } of exclusions) {
    claimApart(one, other, times, found);
    claimApart(other, one, times, found);
  }
  return found;
}

/** One use of a resource, with the moment that begins it. */
interface Use {
  readonly opener: Moment;
  readonly ends: Kept;
}

function keptOf({ durations, demands, holds = [] }: ScheduleProblem, times: Times, resource: number): Use[] {
  const byJobs = durations.map((_, job): Use => {
    const [from, until] = [times.starts[job]!, times.ends[job]!];
    return { opener: [job, 'start'], ends: { job, from, until, count: demands[job]![resource] ?? 0 } };
  });
  const held = holds
    .filter((hold) => hold.resource === resource && hold.from.length > 0 && hold.to.length > 0)
    .map((hold) => useOfHold(hold, times));
  return [...byJobs, ...held].filter(({ ends }) => ends.count > 0 && ends.from < ends.until);
}

function useOfHold({ from, to, count }: Hold, times: Times): Use {
  const minute = (moment: Moment): number => minuteOf(times, moment);
  const opener = from.reduce((first, next) => (minute(next) < minute(first) ? next : first));
  const last = to.reduce((latest, next) => (minute(next) > minute(latest) ? next : latest));
  return { opener, ends: { job: last[0], from: minute(opener), until: minute(last), count } };
}

/** The minute of an edge of a job. */
export function minuteOf({ starts, ends }: Times, [job, edge]: Moment): number {
  return (edge === 'start' ? starts : ends)[job]!;
}

/** A moment as a key: two for each job. */
function countsByOpener(kept: readonly Use[]): Map<number, number> {
  const counts = new Map<number, number>();
  for (const { opener, ends } of kept) {
    const key = 2 * opener[0] + (opener[1] === 'start' ? 0 : 1);
    counts.set(key, (counts.get(key) ?? 0) + ends.count);
  }
  return counts;
}

function momentOf(key: number): Moment {
  return [key >> 1, key % 2 === 0 ? 'start' : 'end'];
}

function claimApart(
  mine: Exclusion['one'],
  theirs: Exclusion['one'],
  { starts, ends }: Times,
  found: readonly Claim[][],
): void {
  const kept = theirs.map(({ job, before = 0, after }) => {
    return { job, from: starts[job]! - before, until: ends[job]! + after, count: 1 };
  });
  const ledger = ledgerOf(kept.filter(({ from, until }) => from < until));
  for (const { job, before = 0 } of mine)
    found[job]!.push({ kind: 'exclusion', ledger, room: 0, edge: 'start', lead: before });
}

function ledgerOf(kept: readonly Kept[]): Ledger {
  const changes = new Map<number, number>();
  for (const { from, until, count } of kept) {
    changes.set(from, (changes.get(from) ?? 0) + count);
    changes.set(until, (changes.get(until) ?? 0) - count);
  }
  const minutes = [...changes.keys()].sort((a, b) => a - b);
  let sum = 0;
  const used = minutes.map((minute) => (sum += changes.get(minute)!));
  const usedBefore = (minute: number): number => used[firstFrom(minutes, minute, (at) => at) - 1] ?? 0;
  return { byEnd: kept.toSorted((a, b) => a.until - b.until || b.job - a.job), usedBefore };
}

/** The index of the first of some items in order that is not before a minute. */
export function firstFrom<T>(items: readonly T[], minute: number, minuteOfItem: (item: T) => number): number {
  let [low, high] = [0, items.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (minuteOfItem(items[middle]!) < minute) low = middle + 1;
    else high = middle;
  }
  return low;
}
