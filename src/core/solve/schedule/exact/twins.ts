import type { ScheduleProblem } from '../problem.ts';
import type { Arc } from './network.ts';

/**
 * Groups of jobs that nothing tells apart (whole models, say) begin in the order of their index: any schedule stays
 * one when two such groups change places, so no other order need be tried.
 */
export function twinOrder(problem: ScheduleProblem): Arc[] {
  const last = new Map<string, number>();
  return groupsOf(problem).flatMap((group) => {
    const looks = JSON.stringify(group.map((job) => looksOf(problem, job, group)));
    const twin = last.get(looks);
    last.set(looks, group[0]!);
    return twin === undefined ? [] : [[twin, group[0]!, 0]];
  });
}

/** Jobs that lags bind to each other, whichever way; each group in order, and the groups by their first job. */
function groupsOf({ durations, lags }: ScheduleProblem): number[][] {
  const groupOf = durations.map((_, job) => [job]);
  for (const [i, j] of lags) {
    if (groupOf[i] === groupOf[j]) continue;
    const both = [...groupOf[i]!, ...groupOf[j]!].sort((a, b) => a - b);
    for (const job of both) groupOf[job] = both;
  }
  return [...new Set(groupOf)];
}

/** All that a schedule must know of a job, with others of its group by their place there. */
function looksOf(problem: ScheduleProblem, job: number, group: readonly number[]): unknown[] {
  const { durations, demands, lags, releases, deadlines } = problem;
  const own = lags.filter(([i]) => i === job);
  const bound = own.map(([, j, ...rest]) => [group.indexOf(j), ...rest]);
  return [durations[job], demands[job], releases?.[job], deadlines?.[job], bound];
}
