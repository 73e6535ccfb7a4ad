import type { JobTimes } from './job-times.ts';
import type { Edge, ScheduleProblem } from '../problem.ts';

/** A lag with everything said: the chosen edge of `to` comes at least `length` after the chosen edge of `from`. */
export interface Tie {
  readonly from: number;
  readonly to: number;
  readonly length: number;
  readonly fromEdge: Edge;
  readonly toEdge: Edge;
  /** Start of `to` minus start of `from` is never less, whatever the calendars. */
  readonly least: number;
}

/** The lags of a problem; those without effect (a job with itself that always holds) are kept, they do no harm. */
export function ties(problem: ScheduleProblem, times: readonly JobTimes[]): Tie[] {
  return problem.lags.map(([from, to, length, fromEdge = 'start', toEdge = 'start']) => {
    const added = fromEdge === 'end' ? problem.durations[from]! : 0;
    const taken = toEdge === 'end' ? times[to]!.longest : 0;
    return { from, to, length, fromEdge, toEdge, least: length + added - taken };
  });
}

/** The earliest start of `tie.to` that the tie allows once `tie.from` has a place. */
export function earliestBy(tie: Tie, start: number, end: number, times: readonly JobTimes[]): number {
  const moment = (tie.fromEdge === 'end' ? end : start) + tie.length;
  return tie.toEdge === 'end' ? times[tie.to]!.startFor(moment) : moment;
}
