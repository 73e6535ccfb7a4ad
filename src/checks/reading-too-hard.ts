import { exact, exactText } from '../core/quantity/exact.ts';
import type { Section } from '../core/model/prose.ts';
import { countsOf, readingGrade } from '../core/statistics/readability.ts';
import type { Check, Finding } from './check.ts';
import type { ModuleRead } from './lookup/context.ts';
import { countsIn, textsForAll } from './lookup/texts-of-module.ts';

/** The school grade up to which texts for everybody are written. Common practice, no source. */
const easyGrade = exact(8);
/** Fewer words than the formula was made for: samples of about a hundred (from memory). */
const fewestWords = 100;

/** English texts for trainees that read harder than texts for everybody do. */
export const readingTooHard: Check = {
  code: 'reading-too-hard',
  gravity: 'note',
  find: ({ modules, workspace: { program } }) =>
    /^en\b/i.test(program.locale) ? modules.flatMap(ofModule) : [],
};

function ofModule({ module, prose }: ModuleRead): readonly Finding[] {
  const sections = textsForAll(module);
  const counts = countsIn(sections);
  const grade = readingGrade(counts);
  if (counts.words < fewestWords || grade.lte(easyGrade)) return [];
  const words = exact(counts.words);
  const facts = {
    module: module.title,
    grade: exactText(grade.round(0)),
    length: exactText(words.div(counts.sentences).round(0)),
    syllables: exactText(words.inverse().mul(counts.syllables).round(1)),
    text: longestSentence(sections),
  };
  return [{ places: [prose(sections[0]!.at)], facts }];
}

function longestSentence(sections: readonly Section[]): string {
  const all = sections.flatMap(({ text = '' }) => text.split(/\n|(?<=[.!?:])\s/));
  const counted = all.map((sentence) => ({ sentence, words: countsOf(sentence).words }));
  return counted.reduce((longest, one) => (one.words > longest.words ? one : longest)).sentence;
}
