import type { Check, Finding } from './check.ts';
import type { PaperRead } from './lookup/context.ts';

/** An approved guide or module of which nobody says who approved it, when, and until when that holds. */
export const missingApproval: Check = {
  code: 'missing-approval',
  gravity: 'incomplete',
  find: ({ papers }) => papers.filter(({ paper }) => paper.status === 'approved').flatMap(ofPaper),
};

function ofPaper({ paper: { approved, title }, place, key }: PaperRead): readonly Finding[] {
  const facts = { paper: title };
  if (!approved) return [{ places: [place('status')], facts }];
  return (['by', 'on', 'until'] as const)
    .filter((missing) => approved[missing] === undefined)
    .map((missing) => ({ variant: missing, places: [key('approved')], facts }));
}
