import type { Workspace } from '../core/model/workspace.ts';
import { planWords } from '../words/plan.ts';
import { capital } from './fill.ts';
import { dangerText } from './danger-text.ts';

/** "Highly flammable liquid and vapour (H225); Causes skin irritation (H315)"; empty where none is known. */
export function materialDangers(id: string, { materials }: Workspace): string {
  const material = materials[id];
  return [...(material?.hazards ?? []), ...(material?.also ?? [])]
    .map((danger) => capital(dangerText(danger)))
    .join(planWords.dangersBetween);
}
