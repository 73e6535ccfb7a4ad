import { causes, type Cause, type Root } from './causes.ts';
import type { Times } from '../mirrored.ts';
import type { ScheduleProblem } from '../problem.ts';

/** A job that could not start earlier, and what kept it from doing so. */
export interface Link {
  readonly job: number;
  readonly because: Root | Cause;
}

/**
 * The jobs that decide when everything ends, from the first to the last: each starts when it does because of the one
 * before it, the first because of its release or because nothing may start earlier. Of several such chains one with
 * the fewest jobs.
 *
 *     |=melt=|..|=pour 1=|=pour 2=|..chill..|=unmould=|      pour 2 waits for the tin, unmould for its chill
 *
 * Where a schedule leaves room, and no such chain reaches its beginning, it is the one that reaches back furthest.
 */
export function criticalChain(problem: ScheduleProblem, times: Times): readonly Link[] {
  const { starts, ends } = times;
  const { rootOf, causesOf } = causes(problem, times);
  const latest = ends.reduce((most, end) => Math.max(most, end), -Infinity);
  const reached = ends.flatMap((end, job) => (end === latest ? [job] : []));
  const then = new Map<number, Link | undefined>(reached.map((job) => [job, undefined]));
  let furthest = reached[0];
  for (const job of reached) {
    const root = rootOf(job);
    if (root) return chainFrom({ job, because: root }, then);
    if (starts[job]! < starts[furthest!]!) furthest = job;
    for (const because of causesOf(job)) {
      if (then.has(because.before)) continue;
      then.set(because.before, { job, because });
      reached.push(because.before);
    }
  }
  return furthest === undefined ? [] : chainFrom({ job: furthest, because: { kind: 'start' } }, then);
}

/** @param then  For each job the link that follows it; `undefined` for the last. */
function chainFrom(first: Link, then: ReadonlyMap<number, Link | undefined>): Link[] {
  const chain = [first];
  for (let next = then.get(first.job); next; next = then.get(next.job)) chain.push(next);
  return chain;
}
