import type { ProblemFamily } from './sentences.ts';

/** How a module judges: scales, weights, pass marks, questions that trainees answer alone. */
export const judgingFindings: ProblemFamily = {
  'answer-not-among-choices': {
    says: 'The right answer of “{text}” is number {right}, and there are {choices} choices.',
    write: 'right: …   the number of the right one, counted from 1',
  },
  'pass-mark-incomplete.by': {
    says: 'The pass mark of “{module}” is set by the method {method}, and it is not said by how many judges, and who they are.',
    write: 'by: …   how many, and their roles rather than their names',
  },
  'pass-mark-incomplete.judges': {
    says: 'The pass mark of “{module}” is set by the method {method}, and it is not said from which data.',
    why: 'The mark is computed from what the judges wrote down, a CSV file beside the module.',
    write: 'judges: …   the name of that file',
  },
  'pass-mark-incomplete.on': {
    says: 'The pass mark of “{module}” is set by the method {method}, and it is not said on which day.',
    write: 'on: …',
  },
  'pass-mark-unsaid': {
    says: '“{module}” does not say how its pass mark was set, nor that none is.',
    write: 'pass:\n  none-set: yes   or method, judges, on and by',
  },
  'scale-without-anchors.ends': {
    says: 'The rating “{rating}” does not say in words what the ends of its scale mean.',
    why: 'Each point, or at least both ends and the middle, is said in words, so that two raters mean the same.',
    write: 'anchors:\n  1: …\n  3: …\n  5: …   what somebody who watches can see',
  },
  'scale-without-anchors.middle': {
    says: 'The rating “{rating}” does not say in words what the middle of its scale means.',
    why: 'Each point, or at least both ends and the middle, is said in words, so that two raters mean the same.',
    write: '{point}: …   among the anchors: what somebody who watches can see',
  },
  'scale-without-anchors.points': {
    says: 'The rating “{rating}” has an anchor at “{point}”, which is not a point of a scale.',
    write: '1: …   each anchor at a whole number',
  },
  'weights-do-not-add-up': {
    says: 'The weights of the items add up to {sum}, and their total is said to be {total}.',
    write: 'total: {sum}   or other weights',
  },
};
