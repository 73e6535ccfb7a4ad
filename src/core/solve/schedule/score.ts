import type { Prepared } from './prepared.ts';

/** How good a schedule is; less is better, the first number first: minutes past deadlines, end, changes of kind. */
export type Score = readonly [late: number, makespan: number, changes: number];

export function score(
  { deadlines, kinds }: Prepared,
  starts: readonly number[],
  ends: readonly number[],
): Score {
  const late = ends.reduce((sum, end, job) => sum + Math.max(0, end - deadlines[job]!), 0);
  return [late, Math.max(0, ...ends), changesOfKind(kinds, starts, ends)];
}

export function compareScores(a: Score, b: Score): number {
  return a[0] - b[0] || a[1] - b[1] || a[2] - b[2];
}

/** How often, in the order of starts, a job is followed by one of another kind. */
function changesOfKind(kinds: readonly number[], starts: readonly number[], ends: readonly number[]): number {
  const counted = kinds.map((_, job) => job).filter((job) => kinds[job]! >= 0 && ends[job]! > starts[job]!);
  counted.sort((a, b) => starts[a]! - starts[b]! || kinds[a]! - kinds[b]!);
  return counted.filter((job, index) => index > 0 && kinds[job] !== kinds[counted[index - 1]!]).length;
}
