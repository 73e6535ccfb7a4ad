import type { Workspace } from '../core/model/workspace.ts';
import type { Check, Finding } from './check.ts';
import type { Context } from './context.ts';
import { isGuideUse } from './usage.ts';

/** A guide that needs its own model as a material, directly or through other guides. Told once a circle. */
export const guideInItself: Check = {
  code: 'guide-in-itself',
  gravity: 'stops',
  find: ({ guides, workspace }) => {
    const told = new Set<string>();
    return guides.flatMap((read) => {
      const needed = neededFor(read.guide.id, workspace);
      if (!needed.has(read.guide.id) || told.has(read.guide.id)) return [];
      const circle = [...needed].filter((id) => neededFor(id, workspace).has(read.guide.id));
      circle.forEach((id) => told.add(id));
      return [finding(read, circle)];
    });
  },
};

function finding({ guide, place }: Context['guides'][number], circle: readonly string[]): Finding {
  const row = guide.materials.findIndex(({ use }) => isGuideUse(use) && circle.includes(idOf(use)));
  return { places: [place('materials', row, 'use')], facts: { guide: guide.title } };
}

/** Ids of the guides whose models a guide needs, and of all that these need in turn. */
function neededFor(guide: string, { guides }: Workspace): ReadonlySet<string> {
  const usedBy = (id: string): readonly string[] =>
    (guides[id]?.materials ?? []).filter(({ use }) => isGuideUse(use)).map(({ use }) => idOf(use));
  const found = new Set(usedBy(guide));
  for (const id of found) usedBy(id).forEach((next) => found.add(next));
  return found;
}

const idOf = (use: string): string => use.slice('guide:'.length);
