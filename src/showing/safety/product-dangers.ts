import type { Workspace } from '../../core/model/workspace.ts';
import { planWords } from '../../words/plan.ts';
import { capital } from '../text/fill.ts';
import { dangerText } from './danger-text.ts';

/** "Highly flammable liquid and vapour (H225); Causes skin irritation (H315)"; empty where none is known. */
export function materialDangers(id: string, { materials }: Workspace): string {
  const material = materials[id];
  return listed([...(material?.hazards ?? []), ...(material?.also ?? [])]);
}

/** "A sharp blade, cuts"; empty where none is known. */
export function toolDangers(id: string, { tools }: Workspace): string {
  return listed(tools[id]?.also ?? []);
}

function listed(dangers: readonly string[]): string {
  return dangers.map((danger) => capital(dangerText(danger))).join(planWords.dangersBetween);
}
