import { groundOf } from '../ground/ground.ts';
import type { Obstacle, ScheduleProblem } from '../problem.ts';
import { consequencesOf } from './consequences.ts';
import { horizonOf } from './horizon.ts';
import { leastEnd } from './least-end.ts';
import { networkOf } from './network.ts';
import { walk } from './walk.ts';

export type Branched =
  | {
      readonly starts: readonly number[];
      /** Latest end, counted from `from`. */
      readonly makespan: number;
      /** No schedule is shorter. */
      readonly proven: boolean;
      readonly lowerBound: number;
    }
  /** Proven: no schedule exists. */
  | { readonly impossible: Obstacle }
  /** None shorter than `upper` was found. That none is: where `lowerBound` has come up to `upper`. */
  | { readonly open: true; readonly lowerBound: number };

export interface Limits {
  /** The makespan of a schedule at hand: only shorter ones are looked for. */
  readonly upper?: number;
  /** Nodes of the tree that may be looked at. Work, never seconds. */
  readonly nodes?: number;
}

/**
 * The shortest schedule of a problem for which `isExact` says yes, or the proof that there is none.
 *
 *     all as early as they may -> a conflict -> a ends before b starts -> a conflict -> ...
 *                                          \--> b starts before a ends -> ...
 *
 * Same problem and limits, same answer.
 *
 * @source Branching over precedence in projects with greatest lags: De Reyck and Herroelen, Eur J Oper Res 111 (1998);
 *         Laborie, IJCAI 2005 (both from memory).
 */
export function branch(problem: ScheduleProblem, limits: Limits = {}): Branched {
  const ground = groundOf(problem);
  if ('impossible' in ground) return ground;
  const { durations, from } = ground.prepared;
  const { upper = Infinity, nodes = usualNodes(durations.length) } = limits;
  const network = networkOf(problem, ground.prepared);
  const [endBy, horizon] = [consequencesOf(network), horizonOf(ground.prepared)];
  const top = Math.min(upper, horizon + 1);
  const none = (impossible: Obstacle): Branched =>
    upper > horizon ? { impossible } : { open: true, lowerBound: upper };

  const bound = leastEnd(network, endBy, ground.bound - from, top);
  if (typeof bound === 'object') return none(bound);
  const { starts, all, conflict } = walk(network, endBy, { bound, top, nodes });
  if (starts) {
    const makespan = Math.max(0, ...starts.map((start, job) => start + durations[job]!));
    const lowerBound = all ? makespan : bound;
    return { starts: starts.map((start) => start + from), makespan, proven: all, lowerBound };
  }
  if (!all) return { open: true, lowerBound: bound };
  return none({ because: 'capacity', jobs: conflict!.jobs, resource: conflict!.resource });
}

/** A node takes about the square of the jobs: some 2,400 nodes for 120 of them. */
function usualNodes(jobs: number): number {
  return Math.ceil(5e7 / (jobs + 25) ** 2);
}
