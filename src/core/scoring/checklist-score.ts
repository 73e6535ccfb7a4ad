import type { ScoredItem } from '../model/module.ts';
import { type Exact, exact, zero } from '../quantity/exact.ts';

/** What somebody reached on a checklist. */
export interface ChecklistScore {
  readonly points: Exact;
  /** All weights together. */
  readonly of: Exact;
  /** From 0 to 1. */
  readonly share: Exact;
  /** Critical items that were not done, by id. */
  readonly failed: readonly string[];
}

/**
 * The weights of the items that were done.
 *
 *     2 + 2 + 3 done, 1 + 2 not   ->   7 of 10 points
 *
 * @param done  Ids of items.
 */
export function checklistScore(items: readonly ScoredItem[], done: ReadonlySet<string>): ChecklistScore {
  const points = weightOf(items.filter(({ id }) => done.has(id)));
  const of = weightOf(items);
  return {
    points,
    of,
    share: of.equals(zero) ? zero : points.div(of),
    failed: items.filter(({ id, critical }) => critical && !done.has(id)).map(({ id }) => id),
  };
}

/** All points that items can bring. */
export function weightOf(items: readonly ScoredItem[]): Exact {
  return items.reduce((sum, { weight }) => sum.add(exact(weight)), zero);
}

/** Whether that passes: a critical item that was not done is never outvoted, whatever the total. */
export function isPass({ share, failed }: ChecklistScore, mark: Exact): boolean {
  return failed.length === 0 && share.compare(mark) >= 0;
}
