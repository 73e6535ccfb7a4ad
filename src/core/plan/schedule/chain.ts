import type { InPieces } from '../../in-pieces.ts';
import { type Link, criticalChain } from '../../solve/schedule/chain/critical-chain.ts';
import { type Times, mirrored, mirroredTimes } from '../../solve/schedule/mirrored.ts';
import type { ScheduleProblem } from '../../solve/schedule/problem.ts';
import { asEarly } from '../../solve/schedule/search/justified.ts';
import { runOfJob } from './jobs.ts';
import type { ChainLink, PlannedJob } from '../result.ts';
import type { Scheduled } from './schedule-runs.ts';

type Because = Omit<ChainLink, 'job'>;

/**
 * The runs that decide when all is ready, or planned backwards when work begins, from the first to the last, each
 * bound to the one before it. Backwards that chain is found in the mirror, where each run is bound to the next.
 *
 * @param jobs  In the order of the plan.
 */
export function* chainOf(
  found: Scheduled,
  jobs: readonly PlannedJob[],
  isBackwards: boolean,
): InPieces<readonly ChainLink[]> {
  const { problem } = found;
  if (!isBackwards) return yield* linksOf(problem, found, found, jobs);
  return turned(yield* linksOf(mirrored(problem), mirroredTimes(found), found, jobs));
}

/** What binds two runs is told at the later of them. */
function turned(links: readonly ChainLink[]): ChainLink[] {
  const backwards = links.toReversed();
  return backwards.map(({ job }, i) => ({ ...(i === 0 ? begun : backwards[i - 1]!), job }));
}
const begun: Because = { because: 'start' };

/** A wait is told with its run; a run that is past is not told. */
function* linksOf(
  problem: ScheduleProblem,
  given: Times,
  found: Scheduled,
  jobs: readonly PlannedJob[],
): InPieces<readonly ChainLink[]> {
  const { links, starts } = yield* tightened(problem, given);
  const placeOf = new Map(jobs.map((job, place) => [keyOf(job.line, job.step, job.run), place]));
  const chain: ChainLink[] = [];
  for (const link of links) {
    const { line, step, run } = runOfJob(link.job, found.jobs);
    const job = placeOf.get(keyOf(line, step.id, run + 1));
    if (job === undefined || chain.at(-1)?.job === job) continue;
    const because = chain.length === 0 && !isRoot(link) ? begun : inWords(link, found, starts);
    chain.push({ job, ...because });
  }
  return chain;
}

/**
 * The chain when what has time to spare is moved as early as it can be, so that nothing but what decides the end is left
 * in its place. Where that would end sooner, with another job, or in another order, it is another plan, and the chain is
 * that of the given one.
 */
function* tightened(
  problem: ScheduleProblem,
  given: Times,
): InPieces<{ readonly links: readonly Link[]; readonly starts: readonly number[] }> {
  const [moved = given] = yield* asEarly(problem, given, [false]);
  const links = criticalChain(problem, moved);
  yield;
  if (isChainOf(given, links, moved)) return { links, starts: moved.starts };
  return { links: criticalChain(problem, given), starts: given.starts };
}

/** Whether a chain leads to the end of the given times too, and its jobs come one after the other there as well. */
function isChainOf(given: Times, links: readonly Link[], moved: Times): boolean {
  const last = links.at(-1)?.job;
  if (last === undefined || given.ends[last] !== endOf(given)) return false;
  return links.every(({ job }, at) => {
    const before = links[at - 1]?.job;
    return before === undefined || !isOver(moved, before, job) || isOver(given, before, job);
  });
}

/** Whether one job is over when another begins. */
function isOver({ starts, ends }: Times, job: number, next: number): boolean {
  return ends[job]! <= starts[next]!;
}

function endOf({ ends }: Times): number {
  return ends.reduce((latest, end) => Math.max(latest, end), -Infinity);
}

function keyOf(line: number, step: string, run: number): string {
  return `${line} ${step} ${run}`;
}

function isRoot({ because }: Link): boolean {
  return !('before' in because);
}

function inWords({ job, because }: Link, { resources }: Scheduled, starts: readonly number[]): Because {
  if (!('before' in because)) return { because: because.kind === 'release' ? 'delivery' : 'start' };
  if (because.closed) return { because: 'hours' };
  if (because.kind === 'exclusion') return { because: 'apart' };
  if (because.kind === 'lag') return { because: starts[because.before]! > starts[job]! ? 'limit' : 'step' };
  const { kind, id } = resources.names[because.resource!]!;
  return kind === 'builders' ? { because: kind } : { because: kind, id };
}
