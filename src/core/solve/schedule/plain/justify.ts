import { mirrored, type Project } from './project.ts';
import { serialPass, type Pass } from './serial-pass.ts';

/** Makes schedules and counts the passes that they take. */
export interface Scheduler {
  /** A schedule from keys, justified unless it ends after `limit` or no two passes are left. */
  readonly schedule: (keys: Float64Array, limit: number) => Pass;
  readonly isSpent: () => boolean;
}

/**
 * Justification: a schedule is pushed to its end, last job first, and then back to its beginning. What lay loose makes
 * room, and the whole often ends earlier.
 *
 *     made     |=a=|..|===b===|      right   |..|=a=|===b===|      left   |=a=|===b===|..|
 *
 * @param most  Passes in all, whether forwards or backwards; at least one is made.
 * @source Valls, Ballestín and Quintanilla, Justification and RCPSP: a technique that pays, EJOR 165 (2005) 375-386
 *         (from memory).
 */
export function scheduler(project: Project, most: number): Scheduler {
  const forwards = serialPass(project);
  const backwards = serialPass(mirrored(project));
  let passes = 0;
  const isSpent = (): boolean => passes >= most;
  const justified = (pass: Pass): Pass => {
    passes += 2;
    const right = backwards(turned(pass.starts, project.durations));
    const left = forwards(turned(right.starts, project.durations.toReversed()));
    return left.end <= pass.end ? left : pass;
  };
  const schedule: Scheduler['schedule'] = (keys, limit) => {
    passes++;
    const pass = forwards(keys);
    return pass.end > limit || passes + 2 > most ? pass : justified(pass);
  };
  return { schedule, isSpent };
}

/** Where the jobs start when time runs the other way, the last of them first. */
function turned(starts: Float64Array, durations: Float64Array): Float64Array {
  return starts.map((start, job) => -(start + durations[job]!)).reverse();
}
