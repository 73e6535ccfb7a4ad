import { leadingTo } from '../core/plan/scale/step-uses.ts';
import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';
import { toolName } from './lookup/names.ts';

/** A tool that is held up to a step which does not come after the one it is held from. */
export const toolHeldBackwards: Check = {
  code: 'tool-held-backwards',
  gravity: 'stops',
  find: (context) => context.guidesInOrder.flatMap((read) => ofGuide(read, context)),
};

function ofGuide(read: GuideAtLevel, { workspace }: Context): readonly Finding[] {
  const { tools, steps } = read.at;
  return tools.flatMap(({ use, held }, i) => {
    if (!held) return [];
    const { from, to } = held;
    const facts = {
      tool: toolName(workspace, use),
      from: read.stepName(from),
      to: read.stepName(to),
      fromId: from,
      toId: to,
    };
    const places = [read.place('tools', i, 'held', 'from'), read.place('tools', i, 'held', 'to')] as const;
    const gone = [from, to].find((id) => !steps.some((step) => step.id === id));
    if (gone !== undefined) return isOfGuide(read, gone) ? [levelLacks(read, gone, facts, places)] : [];
    if (leadingTo(read.at, to).has(from)) return [];
    return [{ variant: leadingTo(read.at, from).has(to) ? undefined : 'apart', places, facts }];
  });
}

/** A step that no level has is told as `unknown-step`. */
function isOfGuide({ guide }: GuideAtLevel, step: string): boolean {
  return guide.steps.some(({ id }) => id === step);
}

function levelLacks(
  read: GuideAtLevel,
  step: string,
  facts: Finding['facts'],
  places: Finding['places'],
): Finding {
  const { only = [] } = read.guide.steps.find(({ id }) => id === step)!;
  return {
    variant: 'level',
    places,
    facts: { ...facts, gone: read.stepName(step), level: read.at.level ?? '', levels: only.join(', ') },
  };
}
