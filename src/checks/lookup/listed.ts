import type { GuideAt } from '../../core/model/guide.ts';
import { meaningOf } from '../../core/plan/scale/step-uses.ts';

/** Whether a name in a step's `uses` means something: a row, a mix, an ingredient. */
export function isListed(at: GuideAt, name: string): boolean {
  const { rows, mixes, ingredients } = meaningOf(at, name);
  return rows.length + mixes.length + ingredients.length > 0;
}

/** All names that a step of the guide may use. */
export function namesToUse(at: GuideAt): readonly string[] {
  const rows = at.materials.flatMap(({ id, use }) => [id, use]);
  const mixes = at.mixes.flatMap(({ id, of }) => [id, ...of.map(({ use }) => use)]);
  return [...new Set([...rows, ...mixes])];
}
