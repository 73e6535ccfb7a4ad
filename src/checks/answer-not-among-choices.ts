import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';

/** A question whose right answer is none of its choices. */
export const answerNotAmongChoices: Check = {
  code: 'answer-not-among-choices',
  gravity: 'stops',
  find: ({ modules }) => modules.flatMap(ofModule),
};

function ofModule({ module, place }: ModuleRead): readonly Finding[] {
  return module.selfCheck.flatMap(({ ask, choices, right }, i): readonly Finding[] => {
    if (right <= choices.length) return [];
    const places = [place('self-check', i, 'right'), place('self-check', i, 'choices')] as const;
    return [{ places, facts: { text: ask, right: String(right), choices: String(choices.length) } }];
  });
}
