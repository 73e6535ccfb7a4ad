import { amountProblems } from './amounts.ts';
import { fileProblems } from './files.ts';
import { frontMatterProblems } from './front-matter.ts';
import { idProblems } from './ids.ts';
import { judgesProblems } from './judges.ts';
import { keyProblems } from './keys.ts';
import { judgingFindings } from './judging.ts';
import { materialFindings } from './materials.ts';
import { moneyProblems } from './money.ts';
import { wordProblems } from './plain-words.ts';
import { objectiveFindings } from './objectives.ts';
import { planRefusals, planWarnings } from './plan.ts';
import { preparingFindings } from './preparing.ts';
import { priceFindings } from './prices.ts';
import { proseProblems } from './prose.ts';
import { publishingProblems } from './publishing.ts';
import { reviewFindings } from './review.ts';
import { safetyFindings } from './safety.ts';
import { sessionFindings } from './sessions.ts';
import { statedFindings } from './stated.ts';
import { stepFindings } from './steps.ts';
import { stockProblems } from './stock.ts';
import { textFindings } from './text.ts';
import { timeProblems } from './times.ts';
import { unknownNameFindings } from './unknown-names.ts';
import { unusualFindings } from './unusual.ts';
import type { ProblemFamily } from './sentences.ts';

/** The sentences of every problem, by `code` or `code.variant`. One literal a family; a family a file. */
export const problemWords: ProblemFamily = {
  ...amountProblems,
  ...fileProblems,
  ...frontMatterProblems,
  ...idProblems,
  ...judgesProblems,
  ...keyProblems,
  ...judgingFindings,
  ...materialFindings,
  ...moneyProblems,
  ...objectiveFindings,
  ...planRefusals,
  ...planWarnings,
  ...preparingFindings,
  ...priceFindings,
  ...proseProblems,
  ...publishingProblems,
  ...reviewFindings,
  ...safetyFindings,
  ...sessionFindings,
  ...statedFindings,
  ...stepFindings,
  ...stockProblems,
  ...textFindings,
  ...timeProblems,
  ...unknownNameFindings,
  ...unusualFindings,
  ...wordProblems,
};
export type { ProblemFamily, ProblemWords } from './sentences.ts';
