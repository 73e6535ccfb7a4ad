import { Bug } from '../../../diagnostic.ts';
import { alike } from './alike.ts';
import { blocks } from './blocks.ts';
import { jobTimes, type JobTimes } from './job-times.ts';
import { jobAt, momentNumber } from './moments.ts';
import type { Member, ScheduleProblem } from '../problem.ts';
import { ties, type Tie } from './ties.ts';

/** A problem with everything worked out that no schedule changes. Jobs by index throughout. */
export interface Prepared {
  readonly durations: readonly number[];
  readonly times: readonly JobTimes[];
  /** No job starts before this minute. */
  readonly from: number;
  readonly releases: readonly number[];
  readonly deadlines: readonly number[];
  /** From 0 on, without gaps, in the order of the problem's; below zero: does not count when like jobs are kept together. */
  readonly kinds: readonly number[];
  readonly into: readonly (readonly Tie[])[];
  readonly outOf: readonly (readonly Tie[])[];
  /** Jobs tied both ways, in an order in which they can be placed. */
  readonly blocks: readonly (readonly number[])[];
  readonly blockOf: readonly number[];
  /** For each block a number that it shares with all blocks like it. */
  readonly likeOf: readonly number[];
  /** For each block the blocks that never start before one of its jobs. */
  readonly followers: readonly (readonly number[])[];
  readonly needs: readonly (readonly Need[])[];
  readonly apart: readonly (readonly Apart[])[];
  readonly holds: readonly HeldResource[];
  readonly holdsOf: readonly (readonly number[])[];
  /** Whether a job takes some of the crew; all do where there is none. */
  readonly isCrew: readonly boolean[];
  /** How many usages there are: the resources, then two sides of each exclusion. */
  readonly usages: number;
}

/** So much of a resource from start to end; the others may use no more than `room`. */
export interface Need {
  readonly usage: number;
  readonly count: number;
  readonly room: number;
}

/** A side of an exclusion: the job marks one usage and may not meet a mark in the other. */
export interface Apart {
  readonly mine: number;
  readonly theirs: number;
  readonly before: number;
  readonly after: number;
}

export interface HeldResource extends Need {
  /** Moments by number. */
  readonly from: readonly number[];
  readonly to: readonly number[];
}

export function prepare(problem: ScheduleProblem): Prepared {
  refuseNonsense(problem);
  const jobs = problem.durations;
  const { from = 0 } = problem;
  const times = jobTimes(problem);
  const { into, outOf } = tiesByJob(ties(problem, times), jobs.length);
  const found = blocks(outOf);
  const blockOf = blockOfEach(found, jobs.length);
  const needs = jobs.map((_, job) => needsOf(problem, job));
  const holds = heldResources(problem);
  const holdsOf = holdsOfEach(holds, jobs.length);
  const prepared: Prepared & { likeOf: number[] } = {
    durations: jobs,
    times,
    from,
    releases: jobs.map((_, job) => Math.max(from, problem.releases?.[job] ?? from)),
    deadlines: jobs.map((_, job) => problem.deadlines?.[job] ?? Infinity),
    kinds: kindsOf(problem),
    into,
    outOf,
    blocks: found,
    blockOf,
    followers: found.map((block, index) => followersOf(block, index, outOf, blockOf)),
    needs,
    apart: apartOf(problem),
    holds,
    holdsOf,
    isCrew: jobs.map((_, job) => problem.crew === undefined || problem.demands[job]![problem.crew]! > 0),
    usages: problem.capacities.length + 2 * (problem.exclusions ?? []).length,
    likeOf: [],
  };
  prepared.likeOf = alike(problem, prepared);
  return prepared;
}

function kindsOf({ durations, kinds = [] }: ScheduleProblem): number[] {
  const all = [...new Set(kinds)].filter((kind) => kind >= 0).sort((a, b) => a - b);
  const numbers = new Map(all.map((kind, number) => [kind, number]));
  return durations.map((_, job) => numbers.get(kinds[job] ?? -1) ?? -1);
}

function tiesByJob(all: readonly Tie[], jobs: number): { into: Tie[][]; outOf: Tie[][] } {
  const [into, outOf] = [lists<Tie>(jobs), lists<Tie>(jobs)];
  for (const tie of all) {
    into[tie.to]!.push(tie);
    outOf[tie.from]!.push(tie);
  }
  return { into, outOf };
}

function followersOf(
  block: readonly number[],
  index: number,
  outOf: Prepared['outOf'],
  blockOf: readonly number[],
): number[] {
  const pushing = block.flatMap((job) => outOf[job]!.filter(({ least }) => least >= 0));
  const after = new Set(pushing.map(({ to }) => blockOf[to]!));
  after.delete(index);
  return [...after];
}

function need(problem: ScheduleProblem, resource: number, count: number): Need {
  return { usage: resource, count, room: problem.capacities[resource]! - count };
}

function needsOf(problem: ScheduleProblem, job: number): Need[] {
  const counts = problem.durations[job]! > 0 ? problem.demands[job]! : [];
  return counts.flatMap((count, resource) => (count > 0 ? [need(problem, resource, count)] : []));
}

function apartOf({ durations, capacities, exclusions = [] }: ScheduleProblem): Apart[][] {
  const apart = lists<Apart>(durations.length);
  exclusions.forEach(({ one, other }, index) => {
    const [first, second] = [capacities.length + 2 * index, capacities.length + 2 * index + 1];
    const add = (members: readonly Member[], mine: number, theirs: number): void => {
      for (const { job, before = 0, after } of members) apart[job]!.push({ mine, theirs, before, after });
    };
    add(one, first, second);
    add(other, second, first);
  });
  return apart;
}

function heldResources(problem: ScheduleProblem): HeldResource[] {
  return (problem.holds ?? [])
    .filter(({ from, to, count }) => from.length > 0 && to.length > 0 && count > 0)
    .map(({ resource, count, from, to }) => ({
      ...need(problem, resource, count),
      from: from.map((moment) => momentNumber(moment, problem.durations.length)),
      to: to.map((moment) => momentNumber(moment, problem.durations.length)),
    }));
}

function holdsOfEach(holds: readonly HeldResource[], jobs: number): number[][] {
  const touched = lists<number>(jobs);
  holds.forEach(({ from, to }, hold) => {
    for (const job of new Set([...from, ...to].map((moment) => jobAt(moment, jobs))))
      touched[job]!.push(hold);
  });
  return touched;
}

function blockOfEach(found: readonly (readonly number[])[], jobs: number): number[] {
  const blockOf = new Array<number>(jobs).fill(-1);
  found.forEach((block, index) => block.forEach((job) => (blockOf[job] = index)));
  return blockOf;
}

function lists<T>(count: number): T[][] {
  return Array.from({ length: count }, () => []);
}

function refuseNonsense({ durations, demands, lags }: ScheduleProblem): void {
  const jobs = durations.length;
  const isJob = (job: number): boolean => Number.isInteger(job) && job >= 0 && job < jobs;
  const wrong =
    demands.length !== jobs ||
    durations.some((minutes) => !Number.isSafeInteger(minutes) || minutes < 0) ||
    lags.some(([from, to, length]) => !isJob(from) || !isJob(to) || !Number.isSafeInteger(length));
  if (wrong) throw new Bug('not a scheduling problem', { durations, demands, lags });
}
