import type { Guide } from '../../model/guide.ts';
import { guideUsed, isGuideUse } from '../../model/guide-use.ts';
import { planAt, usualLevel } from '../../model/plan-at.ts';
import type { Workspace } from '../../model/workspace.ts';

/**
 * Ids of the materials of a model, of what its use takes, and of the models of other guides in it: what whoever holds
 * it may touch.
 */
export function materialsIn(
  id: string,
  level: string | undefined,
  workspace: Workspace,
  seen: readonly string[] = [],
): readonly string[] {
  const guide = workspace.guides[id];
  if (!guide || seen.includes(id)) return [];
  const at = planAt(guide, knownLevel(guide, level));
  const rows = [...at.materials, ...at.mixes.flatMap(({ of }) => of)].map(({ use }) => use);
  const { setUp, between, after, renew } = at.inUse;
  const inUse = [setUp, between, after].flatMap((part) => part?.uses ?? []);
  const taken = [...inUse, ...renew.flatMap(({ materials }) => materials)].map(({ material }) => material);
  const others = rows.filter(isGuideUse).map(guideUsed);
  const within = others.flatMap((other) => materialsIn(other, undefined, workspace, [...seen, id]));
  return [...rows, ...taken, ...within];
}

function knownLevel(guide: Guide, level: string | undefined): string | undefined {
  return guide.levels.some(({ id }) => id === level) ? level : usualLevel(guide);
}
