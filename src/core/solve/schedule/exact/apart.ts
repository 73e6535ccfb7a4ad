import type { Obstacle } from '../problem.ts';
import type { Network } from './network.ts';

/** Two jobs that need more of a resource than there is: one comes after the other. */
export interface Apart {
  readonly one: number;
  readonly other: number;
  readonly resource: number;
}

/** Every such pair, in both orders. */
export function pairsApart({ uses, durations }: Network): Apart[] {
  const jobs = durations.map((_, job) => job);
  return jobs.flatMap((one) =>
    jobs.flatMap((other) => {
      const use = uses.find(({ needs, capacity }) => needs[one]! + needs[other]! > capacity);
      return use && one !== other ? [{ one, other, resource: use.resource }] : [];
    }),
  );
}

/** Lets the other come first where the one no longer can; what proves that neither can. */
export function settleApart(
  { distances, durations }: Network,
  { one, other, resource }: Apart,
): Obstacle | undefined {
  const canBeFirst = distances.at[other * distances.size + one]! <= -durations[one]!;
  if (canBeFirst || distances.settle(other, one, durations[other]!)) return undefined;
  return { because: 'capacity', jobs: [one, other], resource };
}
