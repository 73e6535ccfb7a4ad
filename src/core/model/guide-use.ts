import type { Guide } from './guide.ts';
import type { Workspace } from './workspace.ts';

const mark = 'guide:';

/** Whether a row takes the model of another guide: `guide:vessel-insert`. */
export function isGuideUse(use: string): boolean {
  return use.startsWith(mark);
}

/** `vessel-insert` of such a row. */
export function guideUsed(use: string): string {
  return use.slice(mark.length);
}

/** Ids of the guides whose models a guide's rows take, each once. */
export function guidesUsed({ materials }: { readonly materials: readonly Pick<Row, 'use'>[] }): string[] {
  return [...new Set(materials.flatMap(({ use }) => (isGuideUse(use) ? [guideUsed(use)] : [])))];
}
type Row = Guide['materials'][number];

/** Ids of the guides whose models a guide needs, and of all that these need in turn; itself where that is a circle. */
export function guidesWithin(guide: string, { guides }: Pick<Workspace, 'guides'>): ReadonlySet<string> {
  const usedBy = (id: string): readonly string[] => guidesUsed(guides[id] ?? { materials: [] });
  const found = new Set(usedBy(guide));
  for (const id of found) usedBy(id).forEach((next) => found.add(next));
  return found;
}
