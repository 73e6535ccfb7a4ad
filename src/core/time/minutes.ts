import { Bug } from '../diagnostic.ts';
import type { Duration } from '../model/values.ts';
import { type Exact, ceil, exact } from '../quantity/exact.ts';

/** @throws {Bug} For working days, which only the calendar can turn into time. */
export function secondsOf(duration: Duration): Exact {
  if ('seconds' in duration) return exact(duration.seconds);
  throw new Bug('working days are no fixed length of time', { duration });
}

/** Whole minutes, rounded up: once, at the length of a job. */
export function minutesUp(seconds: Exact): number {
  return ceil(seconds.div(60));
}

/** A time of the clock in whole minutes, rounded up. @throws {Bug} For working days. */
export function minutesOf(duration: Duration): number {
  return minutesUp(secondsOf(duration));
}

/** Whole minutes as ISO 8601: 150 is `PT2H30M`, 0 is `PT0S`. */
export function printDuration(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  return minutes === 0 ? 'PT0S' : `PT${hours > 0 ? `${hours}H` : ''}${rest > 0 ? `${rest}M` : ''}`;
}
