import { type Exact, ceil, exact, one, zero } from '../../quantity/exact.ts';
import { roundUpTo } from '../../quantity/round.ts';

/** How many are wanted, spare, ready already, and to be made so that as many good ones are there. */
export interface HowMany {
  /** Those that go into other models of the plan included. */
  readonly wanted: number;
  readonly spares: number;
  /** Of those wanted and spare so many need not be made. */
  readonly finished: number;
  /** The least number to make. */
  readonly enough: number;
}

/**
 * Models to make so that `wanted` good ones are there, and spares.
 *
 *     100 at 10 % spares -> 110      9 good of 10 -> ceil(10 / 9/10) = 12      8 at 5 % -> 9: one spare at least
 *     10 and 1 spare, 4 ready -> 6 + 1      11 ready -> 0
 *
 * @param asked      Wanted for themselves: they alone have spares.
 * @param forOthers  Wanted for other models of the plan, whose own spares are counted there.
 * @param yields     Good ones of those made, above 0 up to 1.
 * @param rate       Share of spares, of all that are asked for, ready or not; zero for none.
 * @param ready      Good ones that are there: they count as wanted first, then as spares.
 */
export function howMany(asked: number, forOthers: number, yields: Exact, rate: Exact, ready = 0): HowMany {
  const spares = asked > 0 && rate.compare(zero) > 0 ? Math.max(1, ceil(rate.mul(exact(asked)))) : 0;
  const wanted = asked + forOthers;
  const finished = Math.min(ready, wanted + spares);
  const toMake = Math.max(0, wanted - finished);
  const sparesToMake = Math.min(spares, wanted + spares - finished);
  return { wanted, spares, finished, enough: ceil(exact(toMake).div(yields)) + sparesToMake };
}

/**
 * The least number from `made` on with which every run is full.
 *
 *     10 models, 6 in a run -> 12      10 models, 4 in one step and 6 in another -> 12
 *
 * @param fullRuns  Models in a run, of each step whose runs are always full. At least 1 each.
 */
export function inFullRuns(made: number, fullRuns: readonly number[]): number {
  const together = fullRuns.reduce((all, served) => all.lcm(served), one);
  return ceil(roundUpTo(exact(made), together));
}
