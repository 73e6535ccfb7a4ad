import type { ProblemFamily } from './sentences.ts';

/** Lengths of time that cannot be read. */
export const timeProblems: ProblemFamily = {
  'duration-vague': {
    says: 'The {what} is “{text}”, which does not say how long.',
    why: 'Nothing can be planned round it, and another program’s night is longer or shorter.',
    write: '{put}…   in h, as long as it takes',
  },
  'duration-calendar.years': {
    says: 'The {what} is {text}, and years are not all of one length.',
    write: '{put}…   in d; how long something keeps may be in months',
  },
  'duration-calendar.months': {
    says: 'The {what} is {text}, and months are not all of one length.',
    write: '{put}…   in d',
  },
  'working-days-not-here': {
    says: 'The {what} is {text}, and goes by the clock, night and weekend alike.',
    write: '{put}…   in min, h or d',
  },
};
