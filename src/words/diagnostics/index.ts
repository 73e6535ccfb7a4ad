import { amountProblems } from './amounts.ts';
import { fileProblems } from './files.ts';
import { frontMatterProblems } from './front-matter.ts';
import { idProblems } from './ids.ts';
import { keyProblems } from './keys.ts';
import { moneyProblems } from './money.ts';
import { planningProblems } from './planning.ts';
import { planRefusals, planWarnings } from './plan.ts';
import { proseProblems } from './prose.ts';
import { stockProblems } from './stock.ts';
import type { ProblemFamily } from './sentences.ts';
import { timeProblems } from './times.ts';
import { wordProblems } from './plain-words.ts';

/** The sentences of every problem, by `code` or `code.variant`. One literal a family; a family a file. */
export const problemWords: ProblemFamily = {
  ...amountProblems,
  ...fileProblems,
  ...frontMatterProblems,
  ...idProblems,
  ...keyProblems,
  ...moneyProblems,
  ...planningProblems,
  ...planRefusals,
  ...planWarnings,
  ...proseProblems,
  ...stockProblems,
  ...timeProblems,
  ...wordProblems,
};
export type { ProblemFamily, ProblemWords } from './sentences.ts';
