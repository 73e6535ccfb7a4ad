import type { ScheduleProblem } from '../problem.ts';

/** Whether `branch` understands all of a problem: jobs of fixed length that share resources, and not too many. */
export function isExact({
  durations,
  calendarOf = [],
  holds = [],
  exclusions = [],
}: ScheduleProblem): boolean {
  const isPlain = calendarOf.every((calendar) => calendar < 0) && holds.length + exclusions.length === 0;
  return isPlain && durations.length <= mostJobs;
}

/** The table of least times has a cell for each two jobs. */
const mostJobs = 250;
