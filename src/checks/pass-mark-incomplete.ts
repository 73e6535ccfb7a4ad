import type { Check } from './check.ts';

/** A pass mark of which it is not said from whose data, on which day or by whom it was set. */
export const passMarkIncomplete: Check = {
  code: 'pass-mark-incomplete',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module: { scoring, title }, place }) => {
      const pass = scoring?.pass;
      if (!pass || pass === 'none') return [];
      return (['judges', 'on', 'by'] as const)
        .filter((key) => !pass[key])
        .map((variant) => ({
          variant,
          places: [place('scoring', 'pass', 'method')] as const,
          facts: { module: title, method: pass.method },
        }));
    }),
};
