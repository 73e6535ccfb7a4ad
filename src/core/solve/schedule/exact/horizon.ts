import type { Prepared } from '../ground/prepared.ts';

/**
 * Minutes from the first by which a problem can end, if it has a schedule at all.
 *
 * Where every job starts as early as the others let it, a chain of releases, lags, and jobs that wait for each other
 * leads to the last end; it meets no job twice.
 */
export function horizonOf({ durations, from, releases, outOf }: Prepared): number {
  const longest = durations.map((minutes, job) =>
    Math.max(minutes, ...outOf[job]!.map(({ least }) => least)),
  );
  const release = releases.reduce((latest, minute) => Math.max(latest, minute - from), 0);
  return longest.reduce((sum, minutes) => sum + minutes, release);
}
