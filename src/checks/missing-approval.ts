import type { Check, Finding } from './check.ts';
import type { GuideRead } from './context.ts';

/** An approved guide of which nobody says who approved it, when, and until when that holds. */
export const missingApproval: Check = {
  code: 'missing-approval',
  gravity: 'incomplete',
  find: ({ guides }) => guides.filter(({ guide }) => guide.status === 'approved').flatMap(ofGuide),
};

function ofGuide({ guide: { approved, title }, place, key }: GuideRead): readonly Finding[] {
  const facts = { guide: title };
  if (!approved) return [{ places: [place('status')], facts }];
  return (['by', 'on', 'until'] as const)
    .filter((missing) => approved[missing] === undefined)
    .map((missing) => ({ variant: missing, places: [key('approved')], facts }));
}
