import { positiveCircle } from './longest-paths.ts';
import { jobAt } from './moments.ts';
import type { Obstacle } from '../problem.ts';
import type { Prepared } from './prepared.ts';
import type { Way } from './ways-through.ts';

/** A job that needs more than there is, or lags that contradict each other. */
export function plainObstacle(prepared: Prepared): Obstacle | undefined {
  const circle = positiveCircle(prepared);
  if (circle) return { because: 'lags', jobs: circle };
  return tooMuch(prepared);
}

/** A hold of more than there is, that certainly lasts some time. */
export function holdTooLarge(
  { holds, durations }: Prepared,
  ways: readonly (readonly Way[])[],
): Obstacle | undefined {
  const hold = holds.find(({ room }, index) => room < 0 && ways[index]!.some(({ minutes }) => minutes > 0));
  if (!hold) return undefined;
  const jobs = [...new Set([...hold.from, ...hold.to].map((moment) => jobAt(moment, durations.length)))];
  return { because: 'capacity', jobs, resource: hold.usage };
}

function tooMuch({ needs }: Prepared): Obstacle | undefined {
  for (const [job, wanted] of needs.entries()) {
    const need = wanted.find(({ room }) => room < 0);
    if (need) return { because: 'capacity', jobs: [job], resource: need.usage };
  }
  return undefined;
}
