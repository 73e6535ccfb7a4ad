import type { Check } from './check.ts';

/** A question whose right answer is none of its choices. */
export const answerNotAmongChoices: Check = {
  code: 'answer-not-among-choices',
  gravity: 'stops',
  find: ({ modules }) =>
    modules.flatMap(({ module, place }) =>
      module.selfCheck.flatMap(({ ask, choices, right }, i) =>
        right <= choices.length
          ? []
          : [
              {
                places: [place('self-check', i, 'right'), place('self-check', i, 'choices')] as const,
                facts: { text: ask, right: String(right), choices: String(choices.length) },
              },
            ],
      ),
    ),
};
