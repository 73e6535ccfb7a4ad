import type { GuideAt } from '../../model/guide.ts';
import type { PlannedJob } from '../result.ts';
import { runOf } from '../scale/runs.ts';
import { type StepAt, isInHand, toolsOf } from '../scale/step-uses.ts';

/** How many of each tool a run has in use: in hand there, or held over it for its models. */
export function jobTools(at: GuideAt, step: StepAt, models: readonly number[]): PlannedJob['tools'] {
  const counts = new Map<string, number>();
  for (const row of toolsOf(at, step)) {
    const groups = new Set(models.map((model) => runOf(model, row.holds))).size;
    const count = isInHand(at, row, step) ? row.count : row.count * groups;
    counts.set(row.use, (counts.get(row.use) ?? 0) + count);
  }
  return Object.fromEntries(counts);
}
