import type { JobTimes } from './job-times.ts';
import type { ScheduleProblem } from '../problem.ts';

/** A lag with everything said: the chosen edge of `to` comes at least `length` after the chosen edge of `from`. */
export interface Tie {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  /** Whether the end of `from` is meant, not its start; and so of `to`. */
  readonly fromEnd: boolean;
  readonly toEnd: boolean;
  /** Start of `to` minus start of `from` is never less, whatever the calendars. */
  readonly least: number;
}

/** The lags of a problem; those without effect (a job with itself that always holds) are kept, they do no harm. */
export function ties(problem: ScheduleProblem, times: readonly JobTimes[]): Tie[] {
  return problem.lags.map(([from, to, length, fromEdge, toEdge]) => {
    const [fromEnd, toEnd] = [fromEdge === 'end', toEdge === 'end'];
    const added = fromEnd ? problem.durations[from]! : 0;
    const taken = toEnd ? times[to]!.longest : 0;
    return { from, to, length, fromEnd, toEnd, least: length + added - taken };
  });
}

/** The earliest start of `tie.to` that the tie allows once `tie.from` has a place. */
export function earliestBy(tie: Tie, start: number, end: number, times: readonly JobTimes[]): number {
  const moment = (tie.fromEnd ? end : start) + tie.length;
  return tie.toEnd ? times[tie.to]!.startFor(moment) : moment;
}
