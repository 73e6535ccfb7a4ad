import { type Exact, ceil, exact, zero } from '../quantity/exact.ts';

/** How many are wanted, spare, and made so that as many good ones are left. */
export interface HowMany {
  /** Those that go into other models of the plan included. */
  readonly wanted: number;
  readonly spares: number;
  readonly made: number;
}

/**
 * Models to make so that `wanted` good ones are left, and spares.
 *
 *     100 at 10 % spares -> 110      9 good of 10 -> ceil(10 / 9/10) = 12      8 at 5 % -> 9: one spare at least
 *
 * @param asked      Wanted for themselves: they alone have spares.
 * @param forOthers  Wanted for other models of the plan, whose own spares are counted there.
 * @param yields     Good ones of those made, above 0 up to 1.
 * @param rate       Share of spares; zero for none.
 */
export function howMany(asked: number, forOthers: number, yields: Exact, rate: Exact): HowMany {
  const spares = asked > 0 && rate.compare(zero) > 0 ? Math.max(1, ceil(rate.mul(exact(asked)))) : 0;
  const wanted = asked + forOthers;
  return { wanted, spares, made: ceil(exact(wanted).div(yields)) + spares };
}

/**
 * The least number from `made` on with which every run is full.
 *
 *     10 models, 6 in a run -> 12      10 models, 4 in one step and 6 in another -> 12
 *
 * @param fullRuns  Models in a run, of each step whose runs are always full. At least 1 each.
 */
export function inFullRuns(made: number, fullRuns: readonly number[]): number {
  const together = fullRuns.reduce(leastCommonMultiple, 1);
  return Math.ceil(made / together) * together;
}

function leastCommonMultiple(a: number, b: number): number {
  return (a / greatestCommonDivisor(a, b)) * b;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
