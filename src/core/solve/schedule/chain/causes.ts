import { claims, firstFrom, minuteOf, type Claim } from './claims.ts';
import type { Times } from '../mirrored.ts';
import { jobTimes, type JobTimes } from '../ground/job-times.ts';
import type { Edge, Lag, ScheduleProblem } from '../problem.ts';

/** What a job waits for that waits for no other. */
export interface Root {
  readonly kind: 'start' | 'release';
}

/** Another job that keeps one from starting earlier. */
export interface Cause {
  readonly kind: 'lag' | 'resource' | 'exclusion';
  readonly before: number;
  /** The resource that is full until then. */
  readonly resource?: number;
  /** Whether it might have started earlier still, were it not for its calendar. */
  readonly closed: boolean;
}

/** What kept each job of a schedule from starting earlier, one by one. */
export interface Causes {
  readonly rootOf: (job: number) => Root | undefined;
  readonly causesOf: (job: number) => readonly Cause[];
}

/**
 * What keeps jobs back: all that is over at a minute from which a job, by its calendar, comes to its very start.
 *
 *     |=pour 1=|  closed  |=pour 2=|      pour 1 keeps pour 2 back, since nothing could start in between
 */
export function causes(problem: ScheduleProblem, times: Times): Causes {
  const at = jobTimes(problem);
  const into = lagsInto(problem);
  const claimed = claims(problem, times);
  const judged = (job: number): Judged => ({ job, at: at[job]!, start: times.starts[job]!, times });
  return {
    rootOf: (job) => rootOf(problem, judged(job)),
    causesOf: (job) => [
      ...into[job]!.flatMap((lag) => causeByLag(judged(job), lag)),
      ...claimed[job]!.flatMap((claim) => causesByClaim(judged(job), claim)),
    ],
  };
}

/** A job in its place. */
interface Judged {
  readonly job: number;
  readonly at: JobTimes;
  readonly start: number;
  readonly times: Times;
}

function lagsInto({ durations, lags }: ScheduleProblem): Lag[][] {
  const into = durations.map((): Lag[] => []);
  for (const lag of lags) into[lag[1]]!.push(lag);
  return into;
}

function rootOf({ from = 0, releases }: ScheduleProblem, { job, at, start }: Judged): Root | undefined {
  if (at.start(from) === start) return { kind: 'start' };
  const release = Math.max(from, releases?.[job] ?? from);
  return at.start(release) === start ? { kind: 'release' } : undefined;
}

function causeByLag(judged: Judged, [before, , least, edge = 'start', ownEdge = 'start']: Lag): Cause[] {
  const closed = keptUntil(judged, minuteOf(judged.times, [before, edge]) + least, ownEdge);
  return closed === undefined ? [] : [{ kind: 'lag', before, closed }];
}

/**
 * Whether an edge that may not come before a minute keeps a job back: `undefined` where it does not, else whether it
 * does so with the help of the calendar.
 */
function keptUntil({ at, start }: Judged, minute: number, edge: Edge): boolean | undefined {
  const least = edge === 'start' ? minute : at.startFor(minute);
  return at.start(least) === start ? least < start : undefined;
}

/** What is over just before a claim begins, and without which there would have been room for it earlier. */
function causesByClaim(judged: Judged, { kind, ledger, room, edge, lead, resource }: Claim): Cause[] {
  const begins = minuteOf(judged.times, [judged.job, edge]) - lead;
  const found: Cause[] = [];
  for (let last = firstFrom(ledger.byEnd, begins + 1, ({ until }) => until) - 1; last >= 0; last--) {
    const { job: before, until } = ledger.byEnd[last]!;
    const closed = keptUntil(judged, until + lead, edge);
    if (closed === undefined) break;
    if (before === judged.job || ledger.usedBefore(until) <= room) continue;
    found.push({ kind, before, closed, ...(resource === undefined ? {} : { resource }) });
  }
  return found;
}
