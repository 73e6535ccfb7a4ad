import type { Check } from './check.ts';

/** A scoring that says neither how its pass mark was set nor that none is. */
export const passMarkUnsaid: Check = {
  code: 'pass-mark-unsaid',
  gravity: 'incomplete',
  find: ({ modules }) =>
    modules.flatMap(({ module: { scoring, title }, key }) =>
      scoring && !scoring.pass ? [{ places: [key('scoring')] as const, facts: { module: title } }] : [],
    ),
};
