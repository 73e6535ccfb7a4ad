import type { Check, Finding } from './check.ts';
import type { Context, GuideAtLevel } from './lookup/context.ts';
import { toolName } from './lookup/names.ts';

/**
 * A dangerous tool that a guide lists and that no step has in hand: no caution is asked for, and none is printed where
 * it is used.
 */
export const dangerInNoStep: Check = {
  code: 'danger-in-no-step',
  gravity: 'incomplete',
  find: (context) => context.guidesAt.flatMap((read) => ofGuide(read, context)),
};

function ofGuide({ at: { tools }, place }: GuideAtLevel, { workspace }: Context): readonly Finding[] {
  const taken = new Set(tools.filter((row) => row.held || row.in.length > 0).map(({ use }) => use));
  return tools.flatMap(({ use }, i) => {
    const dangers = workspace.tools[use]?.also ?? [];
    if (dangers.length === 0 || taken.has(use)) return [];
    const facts = { tool: toolName(workspace, use), dangers: dangers.join(', ') };
    return [{ places: [place('tools', i, 'use')] as const, facts }];
  });
}
