import type { ScheduleProblem } from '../problem.ts';
import { leastLags } from './least-lags.ts';

/**
 * The jobs of a problem, each after all that it waits for; `undefined` where some wait for each other.
 *
 * @source Kahn, Topological sorting of large networks, Communications of the ACM 5 (1962); from memory.
 */
export function inOrder(problem: ScheduleProblem): number[] | undefined {
  const followers: number[][] = problem.durations.map(() => []);
  const waiting = problem.durations.map(() => 0);
  for (const { from, to } of leastLags(problem)) {
    followers[from]!.push(to);
    waiting[to]!++;
  }
  const order = waiting.flatMap((count, job) => (count === 0 ? [job] : []));
  for (const job of order) {
    for (const next of followers[job]!) if (--waiting[next]! === 0) order.push(next);
  }
  return order.length === waiting.length ? order : undefined;
}
