import type { Check, Finding } from './check.ts';
import type { PaperRead } from './lookup/context.ts';

/** What a guide or a module must say before others may rely on it: its version, its licence; a guide what it trains. */
export const missingForReview: Check = {
  code: 'missing-for-review',
  gravity: 'incomplete',
  find: ({ papers }) => papers.flatMap(ofPaper),
};

function ofPaper({ paper, place }: PaperRead): readonly Finding[] {
  const places = [place('title'), ...(paper.status === 'draft' ? [] : [place('status')])] as const;
  const said = {
    ...('steps' in paper ? { trains: paper.trains } : {}),
    version: paper.version,
    licence: paper.licence,
  };
  return Object.entries(said)
    .filter(([, value]) => value === undefined)
    .map(([variant]) => ({ variant, places, facts: { paper: paper.title } }));
}
