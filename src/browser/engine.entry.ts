import { addressOf, settingsFrom } from '../exports/plan-address.ts';
import { answerSentence } from '../showing/plan/answer-sentence.ts';
import { figures } from '../showing/figures/figures.ts';
import { answeringFirst } from './planner/answer.ts';

/** What the page of a guide calls, once it has loaded this script: it is heavy, and not needed to read. */
const engine = { answeringFirst, addressOf, settingsFrom, answerSentence, figures };
export type Engine = typeof engine;

Object.assign(globalThis, { benchwrightEngine: engine });
