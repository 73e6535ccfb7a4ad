/** The fields of a session's page: how many come, who leads, when it begins. */
export const sessionFieldWords = {
  heading: 'For your people',
  says: 'Change a number: groups, timetable and models follow.',
  peopleHelp: 'A whole number from 0 to 1,000.',
  instructors: 'Instructors',
  begins: 'Begins',
  beginsHelp: 'A day and a time; empty for minutes from the beginning and a plan of the reference week.',
  /** What the page answers after each change. */
  answer: '{people}; instructors: {instructors}. To make: {models}.',
  answerNoModels: '{people}; instructors: {instructors}.',
} as const;
