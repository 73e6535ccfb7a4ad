import type { Check, Finding } from './check.ts';
import type { Context } from './lookup/context.ts';
import { guidesWithin, guideUsed, isGuideUse } from '../core/model/guide-use.ts';

/** A guide that needs its own model as a material, directly or through other guides. Told once a circle. */
export const guideInItself: Check = {
  code: 'guide-in-itself',
  gravity: 'stops',
  find: ({ guides, workspace }) => {
    const told = new Set<string>();
    return guides.flatMap((read) => {
      const needed = guidesWithin(read.guide.id, workspace);
      if (!needed.has(read.guide.id) || told.has(read.guide.id)) return [];
      const circle = [...needed].filter((id) => guidesWithin(id, workspace).has(read.guide.id));
      circle.forEach((id) => told.add(id));
      return [finding(read, circle)];
    });
  },
};

function finding({ guide, place }: Context['guides'][number], circle: readonly string[]): Finding {
  const row = guide.materials.findIndex(({ use }) => isGuideUse(use) && circle.includes(guideUsed(use)));
  return { places: [place('materials', row, 'use')], facts: { guide: guide.title } };
}
