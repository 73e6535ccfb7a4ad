import type { GuideAt } from '../core/model/guide.ts';
import type { Tool } from '../core/model/tool.ts';
import { nearName } from '../core/near-name.ts';
import { usesOf } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { GuideAtLevel } from './lookup/context.ts';
import { isListed, namesToUse } from './lookup/listed.ts';
import { placeOfUse } from './lookup/step-uses.ts';

/** Something that a step uses and that is no row, no mix and nothing in a mix of its guide. */
export const unlistedMaterial: Check = {
  code: 'unlisted-material',
  gravity: 'stops',
  find: ({ guidesAt, workspace }) => guidesAt.flatMap((read) => ofGuide(read, workspace.tools)),
};

type Tools = Readonly<Record<string, Tool>>;

function ofGuide(read: GuideAtLevel, tools: Tools): readonly Finding[] {
  return read.at.steps.flatMap((step, index) =>
    usesOf(read.at, step).flatMap(({ material }, use) => {
      if (isListed(read.at, material)) return [];
      const said = Object.hasOwn(tools, material)
        ? asTool(read.at, step, material)
        : asName(read.at, material);
      const facts = { step: read.stepName(step.id), name: material, ...said.facts };
      return [{ variant: said.variant, places: [nameOfUse(read, index, use)], facts }];
    }),
  );
}

type Said = Pick<Finding, 'variant' | 'facts'>;

function asName(at: GuideAt, name: string): Said {
  const near = nearName(name, namesToUse(at));
  return near ? { variant: 'near', facts: { near } } : { variant: undefined, facts: {} };
}

/** A tool is held by a step, and not used up by it. `others` is what the step uses besides, where names say it. */
function asTool(at: GuideAt, step: GuideAt['steps'][number], tool: string): Said {
  const others = usesOf(at, step).filter(({ material }) => material !== tool);
  const areNames = others.every(({ amount, pieces }) => !amount && !pieces);
  const facts = { others: areNames ? others.map(({ material }) => material).join(', ') : '…', id: step.id };
  return { variant: at.tools.some(({ use }) => use === tool) ? 'tool-here' : 'tool', facts };
}

/** The name itself where the use says more than that. */
function nameOfUse(read: GuideAtLevel, step: number, use: number) {
  const { amount, pieces } = read.at.steps[step]!.uses![use]!;
  return amount || pieces ? placeOfUse(read, step, use, 'material') : placeOfUse(read, step, use);
}
