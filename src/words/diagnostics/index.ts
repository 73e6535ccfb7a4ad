import { amountProblems } from './amounts.ts';
import { fileProblems } from './files.ts';
import { frontMatterProblems } from './front-matter.ts';
import { idProblems } from './ids.ts';
import { keyProblems } from './keys.ts';
import { materialFindings } from './materials.ts';
import { moneyProblems } from './money.ts';
import { wordProblems } from './plain-words.ts';
import { planRefusals, planWarnings } from './plan.ts';
import { priceFindings } from './prices.ts';
import { proseProblems } from './prose.ts';
import { publishingProblems } from './publishing.ts';
import { reviewFindings } from './review.ts';
import { safetyFindings } from './safety.ts';
import { statedFindings } from './stated.ts';
import { stepFindings } from './steps.ts';
import { stockProblems } from './stock.ts';
import { textFindings } from './text.ts';
import { timeProblems } from './times.ts';
import { unknownNameFindings } from './unknown-names.ts';
import type { ProblemFamily } from './sentences.ts';

/** The sentences of every problem, by `code` or `code.variant`. One literal a family; a family a file. */
export const problemWords: ProblemFamily = {
  ...amountProblems,
  ...fileProblems,
  ...frontMatterProblems,
  ...idProblems,
  ...keyProblems,
  ...materialFindings,
  ...moneyProblems,
  ...planRefusals,
  ...planWarnings,
  ...priceFindings,
  ...proseProblems,
  ...publishingProblems,
  ...reviewFindings,
  ...safetyFindings,
  ...statedFindings,
  ...stepFindings,
  ...stockProblems,
  ...textFindings,
  ...timeProblems,
  ...unknownNameFindings,
  ...wordProblems,
};
export type { ProblemFamily, ProblemWords } from './sentences.ts';
