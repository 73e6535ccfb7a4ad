import type { Scoring } from '../model/module.ts';
import { type Exact, zero } from '../quantity/exact.ts';
import { secondsOf } from '../time/minutes.ts';

/**
 * Seconds left of the time limit after the time taken and the penalties; never below zero.
 *
 *     limit 10 min, taken 7 min 30 s, two penalties of 30 s   ->   90
 *     limit 10 min, taken 9 min 50 s, one penalty of 30 s     ->    0
 *
 * @param seconds  Time taken.
 * @param given    How often each penalty was given, in the order of the scoring; it counts no more often than it may.
 * @returns `undefined` where there is no limit.
 * @source The scoring by time and errors that is usual for tasks of keyhole surgery; trade practice, from memory.
 */
export function timeScore(
  { limit, penalties }: Pick<Scoring, 'limit' | 'penalties'>,
  seconds: Exact,
  given: readonly number[],
): Exact | undefined {
  if (!limit) return undefined;
  const added = penalties
    .map(({ adds, atMost }, i) => secondsOf(adds).mul(Math.min(given[i] ?? 0, atMost ?? Infinity)))
    .reduce((sum, of) => sum.add(of), zero);
  const left = secondsOf(limit).sub(seconds).sub(added);
  return left.compare(zero) < 0 ? zero : left;
}
