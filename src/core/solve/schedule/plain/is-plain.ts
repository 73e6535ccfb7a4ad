import type { ScheduleProblem } from '../problem.ts';
import { inOrder } from './in-order.ts';
import { leastLags } from './least-lags.ts';

/**
 * Whether a problem is a project with scarce resources and no more: jobs of fixed length, releases, resources, and
 * least lags of zero or more from start to start (or what comes to the same) that run in no circle. No calendars,
 * deadlines, holds or exclusions, and no kinds to be kept together.
 */
export function isPlain(problem: ScheduleProblem): boolean {
  const {
    calendars = [],
    calendarOf = [],
    deadlines = [],
    holds = [],
    exclusions = [],
    kinds = [],
  } = problem;
  return (
    holds.length === 0 &&
    exclusions.length === 0 &&
    calendarOf.every((calendar) => !calendars[calendar]) &&
    deadlines.every((minute) => minute === Infinity) &&
    kinds.every((kind) => kind < 0) &&
    leastLags(problem).every(({ least }) => least >= 0) &&
    inOrder(problem) !== undefined
  );
}
