import { nearName } from '../core/near-name.ts';
import { usesOf } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './context.ts';
import { isListed, namesToUse } from './listed.ts';
import { placeOfUse } from './step-uses.ts';

/** Something that a step uses and that is no row, no mix and nothing in a mix of its guide. */
export const unlistedMaterial: Check = {
  code: 'unlisted-material',
  gravity: 'stops',
  find: ({ guidesAt }) => guidesAt.flatMap(ofGuide),
};

function ofGuide(read: GuideAtLevel): readonly Finding[] {
  return read.at.steps.flatMap((step, index) =>
    usesOf(read.at, step).flatMap(({ material }, use) => {
      if (isListed(read.at, material)) return [];
      const near = nearName(material, namesToUse(read.at));
      const facts = { step: read.stepName(step.id), name: material, ...(near ? { near } : {}) };
      return [{ variant: near ? 'near' : undefined, places: [nameOfUse(read, index, use)], facts }];
    }),
  );
}

/** The name itself where the use says more than that. */
function nameOfUse(read: GuideAtLevel, step: number, use: number) {
  const { amount, pieces } = read.at.steps[step]!.uses![use]!;
  return amount || pieces ? placeOfUse(read, step, use, 'material') : placeOfUse(read, step, use);
}
