import type { Workspace } from '../../core/model/workspace.ts';
import type { Plan } from '../../core/plan/result.ts';
import { coarseReadings } from './coarse-readings.ts';
import { isOfShopping } from '../shopping/show-shopping-notes.ts';
import { type Shown, shown } from '../shown/shown.ts';
import { warningTexts } from '../text/warning-texts.ts';

/** What the reader of the plan should know: what the planner found, then where a finer scale is needed. */
export function showWarnings(key: string, plan: Plan, workspace: Workspace): readonly Shown[] {
  const found = warningTexts(plan, workspace, (code) => !isOfShopping(code));
  const coarse = plan.lines.flatMap((line) => coarseReadings(line, workspace));
  return [...new Set([...found, ...coarse])].map((text, i) => shown(`${key}[${i}]`, text));
}
