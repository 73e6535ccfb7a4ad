import type { ScheduleProblem } from '../problem.ts';

/** The start of `to` comes at least so long after the start of `from`. */
export interface LeastLag {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

/** The lags of a problem in which every job has its fixed length, from start to start; none that says nothing. */
export function leastLags({ durations, lags }: ScheduleProblem): LeastLag[] {
  return lags
    .map(([from, to, length, edgeOfFrom, edgeOfTo]) => {
      const added = edgeOfFrom === 'end' ? durations[from]! : 0;
      const taken = edgeOfTo === 'end' ? durations[to]! : 0;
      return { from, to, least: length + added - taken };
    })
    .filter(({ from, to, least }) => from !== to || least > 0);
}
